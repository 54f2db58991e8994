import type { CreasePattern, Edge } from '../../shared/creases/crease-pattern.ts';
import type { FoldProgram, FoldStep } from '../../shared/creases/fold-program.ts';
import type { Point } from '../../shared/geometry/plane.ts';
import { mm } from '../../shared/lengths/nanometres.ts';

const crease = (one: number, other: number): Edge => ({
  ends: one < other ? [one, other] : [other, one],
  letter: 'V',
  foldAngle: 180,
});
const border = (one: number, other: number): Edge => ({ ...crease(one, other), letter: 'B', foldAngle: 0 });

const polar = (from: Point, degrees: number, distance: number): Point => ({
  x: from.x + distance * Math.cos((degrees * Math.PI) / 180),
  y: from.y + distance * Math.sin((degrees * Math.PI) / 180),
});

/** Creases that meet in one point, all valleys, in a star of paper of radius 100 mm. @param sectors degrees */
export function oneVertex(sectors: readonly number[]): CreasePattern {
  const centre = { x: 0, y: 0 };
  let direction = 0;
  const ends = sectors.map((sector) => {
    const end = polar(centre, direction, mm(100));
    direction += sector;
    return end;
  });
  const next = (index: number) => ((index + 1) % sectors.length) + 1;
  return {
    vertices: [centre, ...ends],
    edges: [
      ...sectors.map((_, index) => crease(0, index + 1)),
      ...sectors.map((_, index) => border(index + 1, next(index))),
    ],
    faces: sectors.map((_, index) => ({ vertices: [0, index + 1, next(index)], panel: `sector ${index}` })),
    steps: [],
  };
}

/**
 * The triangle twist: an equilateral triangle of creases, from each corner two parallel pleats' creases that
 * stand square on its sides, so that at each corner 60°, 90°, 120° and 90° meet.
 */
export function triangleTwist(side = mm(50), pleat = mm(100)): CreasePattern {
  // clockwise as seen, y down
  const corners = [0, 60].map((turn) => polar({ x: 0, y: 0 }, turn, side));
  const triangle = [{ x: 0, y: 0 }, ...corners];
  const at = (index: number): Point => triangle[index % 3] ?? { x: 0, y: 0 };
  // vertex 3 + 2i ends the pleat from corner i that stands on the side before it, 4 + 2i on the side after it
  const ends = triangle.flatMap((corner, index) => {
    const before = Math.atan2(at(index).y - at(index + 2).y, at(index).x - at(index + 2).x);
    const after = Math.atan2(at(index + 1).y - at(index).y, at(index + 1).x - at(index).x);
    return [before, after].map((along) => polar(corner, (along * 180) / Math.PI - 90, pleat));
  });
  const before = (corner: number) => 3 + 2 * (corner % 3);
  const after = (corner: number) => 4 + 2 * (corner % 3);
  const three = [0, 1, 2];
  return {
    vertices: [...triangle, ...ends],
    edges: [
      ...three.map((i) => crease(i, (i + 1) % 3)),
      ...three.flatMap((i) => [crease(i, before(i)), crease(i, after(i))]),
      ...three.flatMap((i) => [border(before(i), after(i)), border(after(i), before(i + 1))]),
    ],
    faces: [
      { vertices: three, panel: 'triangle' },
      ...three.map((i) => ({
        vertices: [i, after(i), before(i + 1), (i + 1) % 3],
        panel: `pleat ${i}`,
      })),
      ...three.map((i) => ({ vertices: [i, before(i), after(i)], panel: `wedge ${i}` })),
    ],
    steps: [],
  };
}

type Numbers = readonly [number, number, number, number];

/** A fold toward the viewer along a line given in millimetres; what lies on the side of the point moves. */
export const foldOver = (line: Numbers, moving: readonly [number, number], name = 'fold'): FoldStep => ({
  kind: 'fold',
  name,
  line: { from: { x: mm(line[0]), y: mm(line[1]) }, to: { x: mm(line[2]), y: mm(line[3]) } },
  moving: { x: mm(moving[0]), y: mm(moving[1]) },
  direction: 'toward',
  angle: 180,
});

/** A square of 12 mm, all of it one panel. */
export const square = (steps: readonly FoldStep[]): FoldProgram => ({
  outline: [
    [0, 0],
    [12, 0],
    [12, 12],
    [0, 12],
  ].map(([x = 0, y = 0]) => ({ x: mm(x), y: mm(y) })),
  panels: [{ name: 'sheet', left: 0, top: 0, right: mm(12), bottom: mm(12) }],
  steps,
});

export const squareFolds = {
  corners: [
    foldOver([0, 1, 1, 0], [0, 0]),
    foldOver([11, 0, 12, 1], [12, 0]),
    foldOver([12, 11, 11, 12], [12, 12]),
    foldOver([1, 12, 0, 11], [0, 12]),
  ],
  hems: [foldOver([1, 0, 1, 12], [0, 6]), foldOver([11, 0, 11, 12], [12, 6])],
  across: (y: number) => foldOver([0, y, 12, y], [6, y < 6 ? 0 : 12]),
} as const;

/**
 * A pouch of 60 × 40 mm: side flaps of 20 mm at its left, and flaps of 25 mm above and below, all folded over
 * the back panel; open at the right. Blank 80 × 90 mm less the two corners at the left.
 */
export function envelope(): FoldProgram {
  const at = (x: number, y: number) => ({ x: mm(x), y: mm(y) });
  const panel = (name: string, left: number, top: number, right: number, bottom: number) => ({
    name,
    left: mm(left),
    top: mm(top),
    right: mm(right),
    bottom: mm(bottom),
  });
  return {
    outline: [at(20, 0), at(80, 0), at(80, 90), at(20, 90), at(0, 65), at(0, 25)],
    panels: [
      panel('left flap', 0, 25, 20, 65),
      panel('top flap', 20, 0, 80, 25),
      panel('back', 20, 25, 80, 65),
      panel('bottom flap', 20, 65, 80, 90),
      panel('top left', 0, 0, 20, 25),
      panel('bottom left', 0, 65, 20, 90),
    ],
    steps: [
      foldOver([20, 0, 20, 90], [0, 45], 'left flap'),
      foldOver([0, 25, 80, 25], [50, 0], 'top flap'),
      foldOver([0, 65, 80, 65], [50, 90], 'bottom flap'),
    ],
  };
}

export const envelopePocket = {
  name: 'pouch',
  panel: 'back',
  behind: [],
  front: ['left flap', 'top flap', 'bottom flap', 'top left', 'bottom left'],
} as const;
