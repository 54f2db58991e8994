import type { CreasePattern } from '../creases/crease-pattern.ts';
import { edgeKey } from '../creases/edge-key.ts';
import { distanceFrom, type Point } from '../geometry/plane.ts';

/** A vertex of the border may lie this many nanometres off the outline: rounding to whole nanometres. */
const OFF_OUTLINE = 0.71;

/**
 * What is wrong with a pattern as a graph, before anything is folded: a crease joins two faces and the border
 * ends one, and the border is the outline that the pattern was made from.
 */
export function graphFaults(
  { vertices, edges, faces }: CreasePattern,
  outline: readonly Point[],
): readonly string[] {
  const uses = new Map<number, number>();
  for (const { vertices: corners } of faces) {
    for (const [index, from] of corners.entries()) {
      const key = edgeKey(from, corners[(index + 1) % corners.length] ?? from);
      uses.set(key, (uses.get(key) ?? 0) + 1);
    }
  }
  const loose = edges.filter(({ ends, letter }) => uses.get(edgeKey(...ends)) !== (letter === 'B' ? 1 : 2));
  const border = edges.filter(({ letter }) => letter === 'B').flatMap(({ ends }) => ends);
  const astray = border.flatMap((vertex) => vertices[vertex] ?? []).filter((point) => !isOn(point, outline));
  const missing = outline.filter(({ x, y }) => !vertices.some((point) => point.x === x && point.y === y));
  return [
    ...loose.map(
      ({ ends }) => `the edge between vertices ${ends.join(' and ')} has a face too few or too many`,
    ),
    ...(edges.length === uses.size
      ? []
      : [`${uses.size} sides of faces stand against ${edges.length} edges`]),
    ...astray.map(({ x, y }) => `the border leaves the outline at ${x / 1e6}, ${y / 1e6} mm`),
    ...missing.map(({ x, y }) => `the border misses the corner at ${x / 1e6}, ${y / 1e6} mm`),
  ];
}

const isOn = (point: Point, outline: readonly Point[]): boolean =>
  outline.some((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from;
    return (
      Math.abs(distanceFrom({ from, to }, point)) <= OFF_OUTLINE &&
      within(point.x, from.x, to.x) &&
      within(point.y, from.y, to.y)
    );
  });

const within = (value: number, one: number, other: number): boolean =>
  value >= Math.min(one, other) - OFF_OUTLINE && value <= Math.max(one, other) + OFF_OUTLINE;
