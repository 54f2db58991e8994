import { marksOf, type Painted } from './painted.ts';
import type { Mark, PagePoint } from './picture.ts';

/**
 * The marks for painted faces, the farthest first. Faces of one panel that run on flat into each other are drawn as one,
 * so that no hairline shows where they meet.
 */
export function marksOfFaces(faces: readonly Painted[]): readonly Mark[] {
  const groups: Painted[][] = [];
  for (const face of faces) {
    const open = groups.at(-1);
    const [first] = open ?? [];
    if (open && first && joins(first, face)) open.push(face);
    else groups.push([face]);
  }
  return groups.flatMap((group) => marksOf(merged(group)));
}

const joins = (one: Painted, other: Painted): boolean =>
  one.plate !== undefined &&
  one.plate === other.plate &&
  one.part === other.part &&
  one.left === undefined &&
  other.left === undefined;

function merged(group: readonly Painted[]): Painted {
  const [first] = group;
  if (!first) throw new Error('nothing is merged');
  if (group.length === 1) return first;
  const outline = outlineAround(group.map((face) => face.outline));
  return outline ? { ...first, outline, lines: group.flatMap(({ lines }) => lines) } : first;
}

const nameOf = ({ x, y }: PagePoint): string => `${x},${y}`;

/** The corners around polygons that share whole edges; none where that is no single loop. */
function outlineAround(polygons: readonly (readonly PagePoint[])[]): readonly PagePoint[] | undefined {
  const edges = polygons.flatMap((corners) =>
    corners.map((from, index) => [from, corners[(index + 1) % corners.length] ?? from] as const),
  );
  const names = new Set(edges.map(([from, to]) => `${nameOf(from)} ${nameOf(to)}`));
  const next = new Map(
    edges
      .filter(([from, to]) => !names.has(`${nameOf(to)} ${nameOf(from)}`))
      .map(([from, to]) => [nameOf(from), to]),
  );
  const [start] = [...next.values()];
  const loop: PagePoint[] = [];
  for (let here = start; here && loop.length < next.size; here = next.get(nameOf(here))) loop.push(here);
  const closes =
    start && nameOf(next.get(nameOf(loop.at(-1) ?? start)) ?? { x: Number.NaN, y: 0 }) === nameOf(start);
  return closes && loop.length === next.size ? loop : undefined;
}
