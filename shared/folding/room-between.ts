import { spineFor } from '../contents/stack.ts';
import type { CreasePattern } from '../creases/crease-pattern.ts';
import { TOUCH } from './flat-faces.ts';
import type { Bond } from './glue-bonds.ts';
import { areParallel, groundBox, heightOver, type LeafPlane, onPlane } from './leaf-planes.ts';
import { shareGround } from './plane-overlap.ts';
import { carryDirection, type Motion, minus, still, times } from './space.ts';
import type { LeafLayers } from './thickness.ts';

/** What must find room between leaves that stand face to face; lengths in nanometres. */
export interface Between {
  readonly pattern: CreasePattern;
  /** Where each face stands. */
  readonly motions: readonly Motion[];
  /** For each face, the number of its leaf. */
  readonly leaves: readonly number[];
  readonly planes: readonly LeafPlane[];
  readonly layers: ReadonlyMap<number, LeafLayers>;
  readonly bonds: readonly Bond[];
  /** Panels on whose inside the contents lie. */
  readonly behind: readonly string[];
  readonly stack: number;
  readonly caliper: number;
  /** Layers that the style reckons with around the contents, if more than lie beside the folds. */
  readonly layersAround: number;
}

/**
 * Where two leaves of the piece that is set up stand too near to each other for the paper, and the contents, between
 * them. Each fold hinges at mid-sheet, so of n layers n − 1 count; layers that are glued on each other count both.
 */
export function roomFaults(between: Between): string[] {
  const { planes } = between;
  const glued = gluedLeaves(between);
  const pairs = planes.flatMap((one, index) =>
    planes
      .slice(index + 1)
      .filter((other) => areParallel(one, other) && !glued.get(one.leaf)?.has(other.leaf))
      .map((other) => {
        const apart = Math.abs(heightOver(one, other.origin));
        return { one, other, apart, contents: holds(one, other, between) || holds(other, one, between) };
      }),
  );
  const widest = Math.max(0, ...pairs.map(({ contents, apart }) => (contents ? apart : 0)));
  return pairs.flatMap((pair) => faultBetween({ ...pair, outermost: pair.apart >= widest }, between, glued));
}

interface Pair {
  readonly one: LeafPlane;
  readonly other: LeafPlane;
  readonly apart: number;
  /** The contents lie between them. */
  readonly contents: boolean;
  /** No two leaves around the contents stand further apart. */
  readonly outermost: boolean;
}

function faultBetween(
  { one, other, apart, contents, outermost }: Pair,
  between: Between,
  glued: Glued,
): string[] {
  const { caliper, layers, pattern } = between;
  const beside = [one.leaf, other.leaf].flatMap((leaf) => [leaf, ...(glued.get(leaf) ?? [])]);
  const found = beside.reduce((sum, leaf) => sum + (layers.get(leaf)?.beside ?? 0), 0);
  const count = contents && outermost ? Math.max(found, between.layersAround) : found;
  const needed = spineFor(contents ? between.stack : 0, { layers: count, caliper, ease: 0 });
  if (needed <= apart + TOUCH || !lieOver(one, other)) return [];
  const [panel, second] = [one, other].map(({ faces }) => pattern.faces[faces[0] ?? -1]?.panel);
  return [
    `${count} layers${contents ? ' and the contents' : ''} take ${needed / 1e6} mm between ${panel} and ${second}, which stand ${apart / 1e6} mm apart`,
  ];
}

/** Whether the contents lie on a leaf, on the side where another stands. */
const holds = (
  { faces, origin }: LeafPlane,
  other: LeafPlane,
  { pattern, behind, motions }: Between,
): boolean =>
  faces.some((face) => {
    const inside = carryDirection(motions[face] ?? still, { x: 0, y: 0, z: 1 });
    return (
      behind.includes(pattern.faces[face]?.panel ?? '') && times(inside, minus(other.origin, origin)) > TOUCH
    );
  });

/** For each leaf, the others that glue holds on it. */
type Glued = ReadonlyMap<number, ReadonlySet<number>>;

function gluedLeaves({ bonds, leaves }: Between): Glued {
  const found = new Map<number, Set<number>>();
  for (const { owner, other } of bonds) {
    const [one, two] = [leaves[owner.index] ?? -1, leaves[other.index] ?? -1];
    if (one === two) continue;
    found.set(one, (found.get(one) ?? new Set()).add(two));
    found.set(two, (found.get(two) ?? new Set()).add(one));
  }
  return found;
}

/** Whether two parallel leaves cover each other somewhere, seen square to them. */
function lieOver(one: LeafPlane, other: LeafPlane): boolean {
  const [here, there] = [groundBox(one, one), groundBox(one, other)];
  if (
    here.right <= there.left + TOUCH ||
    there.right <= here.left + TOUCH ||
    here.bottom <= there.top + TOUCH ||
    there.bottom <= here.top + TOUCH
  )
    return false;
  const grounds = [one, other].map(({ polygons }) =>
    polygons.map((polygon) => polygon.map((corner) => onPlane(one, corner))),
  );
  return (grounds[0] ?? []).some((polygon) =>
    (grounds[1] ?? []).some((beside) => shareGround(polygon, beside)),
  );
}
