import { applyConvention } from '../../shared/drawing/apply-convention.ts';
import { drawFolder } from '../../shared/drawing/draw-folder.ts';
import type { FontShelf } from '../../shared/lettering/font-choice.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { writeSvg } from '../svg/write-svg.ts';
import { cutOrRefuse } from './cut-or-refuse.ts';
import { foldOrRefuse } from './fold-or-refuse.ts';
import { noFonts } from './fonts-for.ts';

/**
 * The layered SVG for a spec, in its own convention.
 * @param fonts from `fontsFor`, where the spec has lettering
 * @throws CannotBeFolded
 */
export function svgOfFolder(spec: FolderSpec, fonts: FontShelf = noFonts): string {
  const folded = cutOrRefuse(foldOrRefuse(spec, fonts));
  return writeSvg(applyConvention(drawFolder(folded), spec.convention));
}
