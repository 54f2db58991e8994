import type { Folded } from '../folding/proof-of.ts';
import { isOuter } from '../geometry/area.ts';
import { boundsOf } from '../geometry/bounds.ts';
import { offset } from '../geometry/clip/offset.ts';
import { moveShape } from '../geometry/move-shape.ts';
import { openingsInOrder } from '../knockouts/cut-order.ts';
import { type Piece, piecesOf } from '../knockouts/pieces.ts';
import { startedWell } from '../knockouts/start-point.ts';
import { describeLength } from '../lengths/show-length.ts';
import { cuttingCaution } from './cutting-caution.ts';
import type { Drawing } from './drawing.ts';

/**
 * A piece to cut from another paper, by its name; undefined where the folder has none of that name. Like the folder it
 * is drawn as its paper lies with the face down that will be seen.
 */
export function drawPiece(folded: Folded, name: string): Drawing | undefined {
  const piece = piecesOf(folded).find((each) => each.name === name);
  return piece && drawingOf(piece, folded);
}

function drawingOf({ title, shape }: Piece, { plan }: Folded): Drawing {
  const { measure, cutter } = plan.spec;
  const cut = offset(shape, (cutter?.kerf ?? 0) / 2, 'mitred');
  const { left, top, right, bottom } = boundsOf(cut);
  // what is seen from above is mirrored where it lies face down
  const lying = moveShape(cut, { a: -1, b: 0, c: 0, d: 1, tx: right, ty: -top });
  const own = boundsOf(shape);
  const size = [own.right - own.left, own.bottom - own.top].map((length) =>
    describeLength(Math.round(length), measure),
  );
  const count = lying.filter(isOuter).length;
  return {
    title: `${title.charAt(0).toUpperCase()}${title.slice(1)}, ${size.join(' by ')}`,
    description: [
      count === 1 ? 'One piece.' : `${count} pieces.`,
      'Drawn with the face down that will be seen, as the folder is with its outside.',
      cuttingCaution,
    ].join(' '),
    width: right - left,
    height: bottom - top,
    valleys: [],
    mountains: [],
    knockouts: openingsInOrder(lying).map((contours, index) => ({ id: `knockout-${index + 1}`, contours })),
    outline: { id: 'outline', contours: lying.filter(isOuter).map(startedWell) },
    offcuts: [],
    wholeSheet: false,
    turned: false,
  };
}
