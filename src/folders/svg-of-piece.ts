import { applyConvention } from '../../shared/drawing/apply-convention.ts';
import { drawPiece } from '../../shared/drawing/draw-piece.ts';
import { piecesOf } from '../../shared/knockouts/pieces.ts';
import type { FontShelf } from '../../shared/lettering/font-choice.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import { writeSvg } from '../svg/write-svg.ts';
import { cutOrRefuse } from './cut-or-refuse.ts';
import { foldOrRefuse } from './fold-or-refuse.ts';
import { noFonts } from './fonts-for.ts';

/**
 * The layered SVG of a piece that is cut from another paper, in the spec's convention.
 * @param name as a plan lists it under `knockouts.pieces`
 * @param fonts from `fontsFor`, where the spec has lettering
 * @throws CannotBeFolded
 * @throws HttpProblem with 404 for a piece that the folder does not have
 */
export function svgOfPiece(spec: FolderSpec, name: string, fonts: FontShelf = noFonts): string {
  const folded = cutOrRefuse(foldOrRefuse(spec, fonts));
  const drawing = drawPiece(folded, name);
  if (drawing) return writeSvg(applyConvention(drawing, spec.convention));
  const names = piecesOf(folded).map((piece) => piece.name);
  const message = `there is no piece ${JSON.stringify(name)}`;
  const remedy = names.length === 0 ? 'no knockout has an inlay' : `use one of: ${names.join(', ')}`;
  throw new HttpProblem(404, message, [{ path: '/piece', message, remedy }]);
}
