import type { GlueStrip } from '../creases/fold-program.ts';
import { glueKeepOut } from '../creases/glue-keep-out.ts';
import { move, type Point } from '../geometry/plane.ts';
import type { Neighbours } from './faces-across.ts';
import { boxOf, type FlatFace, TOUCH } from './flat-faces.ts';

/** Where a strip lies when its face lies somewhere: upright still, as folds turn it by whole quarters. */
export interface Placed {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly corners: readonly Point[];
}

export function placed(
  { left, right, top, bottom }: Pick<GlueStrip, 'left' | 'right' | 'top' | 'bottom'>,
  { lies }: Pick<FlatFace, 'lies'>,
): Placed {
  const corners = [
    move(lies, { x: left, y: top }),
    move(lies, { x: right, y: top }),
    move(lies, { x: right, y: bottom }),
    move(lies, { x: left, y: bottom }),
  ];
  return { ...boxOf(corners), corners };
}

/** Whether a strip and a face overlap: neither the strip's box nor an edge of the face parts them. */
export const liesUnder = (strip: Placed, face: FlatFace): boolean =>
  strip.left < face.right - TOUCH &&
  face.left < strip.right - TOUCH &&
  strip.top < face.bottom - TOUCH &&
  face.top < strip.bottom - TOUCH &&
  face.corners.every((_, edge) => depths(face, edge, strip)[1] > TOUCH);

/**
 * Whether a strip lies in a plate, far enough from its free edges and scores. Edges where its faces run on flat into
 * each other do not count.
 * @param plate one face, or several that are never folded apart
 * @param corners of each face of the sheet, as indices of its vertices
 */
export function isClear(
  plate: readonly FlatFace[],
  strip: Placed,
  corners: readonly (readonly number[])[],
  neighbours: Neighbours,
): boolean {
  const [only, another] = plate;
  if (only && !another)
    return isClearIn(only, strip, corners[only.index] ?? [], neighbours[only.index] ?? []);
  const area = (strip.right - strip.left) * (strip.bottom - strip.top);
  const covered = plate.reduce((sum, face) => sum + sharedArea(face, strip), 0);
  if (covered < area * (1 - 1e-6)) return false;
  return plate.every((face) =>
    (corners[face.index] ?? []).every((vertex, index) => {
      const across = neighbours[face.index]?.find(({ from }) => from === vertex);
      if (across?.edge.letter === 'F') return true;
      const [p, q] = [face.corners[index], face.corners[index + 1] ?? face.corners[0]];
      return !p || !q || distanceBetween(p, q, strip) >= leastFor(face, vertex, neighbours) - TOUCH;
    }),
  );
}

/** The same for a single face, whose corners all count. */
export const isClearIn = (
  face: FlatFace,
  strip: Placed,
  corners: readonly number[],
  across: Neighbours[number],
): boolean =>
  corners.every((vertex, index) => {
    const isScore = across.some(({ from }) => from === vertex);
    return depths(face, index, strip)[0] >= glueKeepOut[isScore ? 'score' : 'edge'] - TOUCH;
  });

const leastFor = ({ index }: FlatFace, vertex: number, neighbours: Neighbours): number =>
  glueKeepOut[(neighbours[index] ?? []).some(({ from }) => from === vertex) ? 'score' : 'edge'];

/** The least and the greatest distance of a strip's corners from an edge of a face, positive on the face's side. */
function depths({ corners, turned }: FlatFace, edge: number, strip: Placed): readonly [number, number] {
  const [p, q] = [corners[edge], corners[edge + 1] ?? corners[0]];
  if (!p || !q) return [Number.NaN, Number.NaN];
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  const toward = (turned ? -1 : 1) / Math.hypot(dx, dy);
  let [least, most] = [Infinity, -Infinity];
  for (const { x, y } of strip.corners) {
    const depth = toward * (dx * (y - p.y) - dy * (x - p.x));
    if (depth < least) least = depth;
    if (depth > most) most = depth;
  }
  return [least, most];
}

/** The distance of a segment from an upright rectangle that it does not reach into; 0 where it does. */
export function distanceBetween(p: Point, q: Point, { left, right, top, bottom, corners }: Placed): number {
  const toBox = ({ x, y }: Point) =>
    Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
  const square = (q.x - p.x) ** 2 + (q.y - p.y) ** 2;
  const toSegment = ({ x, y }: Point) => {
    const share = Math.min(1, Math.max(0, ((x - p.x) * (q.x - p.x) + (y - p.y) * (q.y - p.y)) / square));
    return Math.hypot(x - p.x - share * (q.x - p.x), y - p.y - share * (q.y - p.y));
  };
  return crossesBox(p, q, { left, right, top, bottom })
    ? 0
    : Math.min(toBox(p), toBox(q), ...corners.map(toSegment));
}

function crossesBox(
  p: Point,
  q: Point,
  box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
): boolean {
  let [start, end] = [0, 1];
  for (const [from, to, least, most] of [
    [p.x, q.x, box.left, box.right],
    [p.y, q.y, box.top, box.bottom],
  ] as const) {
    if (from === to) {
      if (from <= least || from >= most) return false;
      continue;
    }
    const [a, b] = [(least - from) / (to - from), (most - from) / (to - from)];
    start = Math.max(start, Math.min(a, b));
    end = Math.min(end, Math.max(a, b));
  }
  return start < end;
}

/** Square nanometres of a strip that lie in a convex face. */
function sharedArea({ corners }: FlatFace, { left, right, top, bottom }: Placed): number {
  let rest = corners;
  for (const depth of [
    ({ x }: Point) => x - left,
    ({ x }: Point) => right - x,
    ({ y }: Point) => y - top,
    ({ y }: Point) => bottom - y,
  ]) {
    rest = rest.flatMap((p, index) => {
      const q = rest[(index + 1) % rest.length] ?? p;
      const [here, there] = [depth(p), depth(q)];
      const kept = here >= 0 ? [p] : [];
      if (here * there >= 0) return kept;
      const share = here / (here - there);
      return [...kept, { x: p.x + share * (q.x - p.x), y: p.y + share * (q.y - p.y) }];
    });
  }
  const twice = rest.reduce((sum, p, index) => {
    const q = rest[(index + 1) % rest.length] ?? p;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  return Math.abs(twice) / 2;
}
