import { covers, type FlatFace } from '../folding/flat-faces.ts';
import type { Folded } from '../folding/proof-of.ts';
import { move, type Point } from '../geometry/plane.ts';
import type { FlatLook } from './flat-look.ts';
import type { Mark } from './picture.ts';

/** The face of the blank that a point lies in is looked for this far around it, in nanometres: places lie on edges. */
const around = [0, 20_000, -20_000] as const;

/**
 * A number at each place where the checks of knockouts found something, as far as a look shows the layer there.
 * @param faces where they lie in what is looked at
 */
export const findingMarks = (
  { knockouts }: Pick<Folded, 'knockouts'>,
  faces: readonly FlatFace[],
  look: FlatLook,
): readonly Mark[] =>
  (knockouts?.findings ?? []).flatMap(({ at, brief, does }, index) =>
    at.flatMap((point): Mark[] => {
      const face = seenFace(point, faces, look);
      if (!face) return [];
      const number = index + 1;
      return [
        { kind: 'finding', number, words: brief, refuses: does === 'refuse', at: look.at(face.index, point) },
      ];
    }),
  );

/** The face that a point of the sheet lies in, if nothing lies over it there. */
function seenFace(point: Point, faces: readonly FlatFace[], look: FlatLook): FlatFace | undefined {
  const toward = look.side === 'inside' ? 1 : -1;
  for (const dx of around) {
    for (const dy of around) {
      const near = { x: point.x + dx, y: point.y + dy };
      const own = faces.find((face) => {
        const { x, y } = move(face.lies, near);
        return covers(face, x, y);
      });
      if (!own) continue;
      const { x, y } = move(own.lies, near);
      const over = faces.some((face) => toward * (face.height - own.height) > 0 && covers(face, x, y));
      if (!over && look.order.includes(own.index)) return own;
    }
  }
  return undefined;
}
