import { type AboutDesign, guideOf } from '../../shared/guide/guide-of.ts';
import type { GuideWish } from '../../shared/guide/guide-query.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { cutOrRefuse } from '../folders/cut-or-refuse.ts';
import { foldOrRefuse } from '../folders/fold-or-refuse.ts';
import { fontsFor } from '../folders/fonts-for.ts';
import { writeGuideHtml } from './write-html.ts';
import { writeGuidePdf } from './write-pdf.ts';

/** A maker's sheet, ready to be sent. */
export interface WrittenGuide {
  readonly mediaType: string;
  readonly bytes: Buffer;
}

/**
 * The maker's sheet for a spec.
 * @param made the time that a PDF tells
 * @param about what a design says beside its spec
 * @throws CannotBeFolded
 */
export async function guideOfFolder(
  spec: FolderSpec,
  wish: GuideWish,
  made: Date,
  about: AboutDesign = {},
): Promise<WrittenGuide> {
  const folded = cutOrRefuse(foldOrRefuse(spec, await fontsFor(spec)));
  const guide = guideOf(folded, wish, about);
  return wish.format === 'html'
    ? { mediaType: 'text/html; charset=utf-8', bytes: Buffer.from(writeGuideHtml(guide, wish.print)) }
    : { mediaType: 'application/pdf', bytes: await writeGuidePdf(guide, folded, wish, made) };
}
