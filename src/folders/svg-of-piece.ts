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
 * The layered SVG of a piece that goes with a folder's knockouts, such as `inlay-1`, in the spec's own convention.
 * @param fonts from `fontsFor`, where the spec has lettering
 * @throws CannotBeFolded
 * @throws HttpProblem with 404 for a piece that the folder does not have
 */
export function svgOfPiece(spec: FolderSpec, piece: string, fonts: FontShelf = noFonts): string {
  const folded = cutOrRefuse(foldOrRefuse(spec, fonts));
  const drawing = drawPiece(folded, piece);
  if (drawing) return writeSvg(applyConvention(drawing, spec.convention));
  const names = piecesOf(folded).map(({ name }) => name);
  const message = `this folder has no piece called ${JSON.stringify(piece)}`;
  const remedy =
    names.length === 0
      ? 'ask a knockout for an inlay with its member "inlay"'
      : `use ${names.map((name) => JSON.stringify(name)).join(' or ')}`;
  throw new HttpProblem(404, message, [{ path: '/piece', message, remedy }]);
}
