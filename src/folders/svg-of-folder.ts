import { applyConvention } from '../../shared/drawing/apply-convention.ts';
import { drawFolder } from '../../shared/drawing/draw-folder.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { writeSvg } from '../svg/write-svg.ts';
import { foldOrRefuse } from './fold-or-refuse.ts';

/**
 * The layered SVG for a spec, in its own convention.
 * @throws CannotBeFolded
 */
export function svgOfFolder(spec: FolderSpec): string {
  const { plan, pattern } = foldOrRefuse(spec);
  return writeSvg(applyConvention(drawFolder(plan, pattern), spec.convention));
}
