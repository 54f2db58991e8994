import { closedAngleOf } from '../creases/crease-pattern.ts';
import { TOUCH } from './flat-faces.ts';
import type { Joint } from './joints.ts';
import { areParallel, groundBox, type LeafPlane } from './leaf-planes.ts';
import type { Spot } from './spots.ts';

/** Layers that lie on each other somewhere in the flat form. */
export interface Stack {
  readonly layers: number;
  /** The panels, from the lowest layer up. */
  readonly panels: readonly string[];
  /** Square millimetres. */
  readonly area: number;
}

/** How thick the finished piece is, counted in layers of its own sheet. */
export interface ClosedLayers {
  /** All leaves that lie over each other, beside the folds that set them up; absent where none is. */
  readonly atSpine?: number;
  /** The same where they are thickest. */
  readonly most: number;
}

/** Every different stack of panels, the thickest first. */
export function stacksOf(spots: readonly Spot[]): readonly Stack[] {
  const stacks = new Map<string, Stack>();
  for (const { stack, area } of spots) {
    const panels = stack.map(({ panel }) => panel);
    const known = stacks.get(panels.join());
    stacks.set(panels.join(), { layers: panels.length, panels, area: area + (known?.area ?? 0) });
  }
  return [...stacks.values()].toSorted((one, other) => other.layers - one.layers || other.area - one.area);
}

/** How many layers one leaf has: beside the folds at which it is set up, and where it is thickest. */
export interface LeafLayers {
  readonly beside: number;
  readonly most: number;
}

/** Counts the layers of every leaf, by its number. */
export function layersOfLeaves(
  leaves: readonly number[],
  spots: readonly Spot[],
  joints: readonly Joint[],
): ReadonlyMap<number, LeafLayers> {
  const bends = joints.filter(({ edge }) => closedAngleOf(edge) % 180 !== 0);
  const found = new Map<number, { beside: number; most: number }>();
  for (const spot of spots) {
    const counts = new Map<number, number>();
    for (const { index } of spot.stack) {
      const leaf = leaves[index] ?? -1;
      counts.set(leaf, (counts.get(leaf) ?? 0) + 1);
    }
    for (const [leaf, count] of counts) {
      const known = found.get(leaf) ?? { beside: 0, most: 0 };
      found.set(leaf, known);
      known.most = Math.max(known.most, count);
      if (count > known.beside && bends.some((joint) => isBeside(spot, joint, leaf, leaves)))
        known.beside = count;
    }
  }
  return found;
}

/** Whether a cell ends at a fold of one of the leaf's faces. */
function isBeside(
  spot: Spot,
  { from, to, one, other }: Joint,
  leaf: number,
  leaves: readonly number[],
): boolean {
  if (leaves[one.index] !== leaf && leaves[other.index] !== leaf) return false;
  const near = (p: number, q: number) => Math.abs(p - q) <= TOUCH;
  if (near(from.x, to.x))
    return (
      (near(spot.left, from.x) || near(spot.right, from.x)) &&
      spot.y > Math.min(from.y, to.y) &&
      spot.y < Math.max(from.y, to.y)
    );
  return (
    near(from.y, to.y) &&
    (near(spot.top, from.y) || near(spot.bottom, from.y)) &&
    spot.x > Math.min(from.x, to.x) &&
    spot.x < Math.max(from.x, to.x)
  );
}

/** The layers of a whole finished piece, looking square through the leaf of its face. */
export function closedLayers(
  face: LeafPlane | undefined,
  planes: readonly LeafPlane[],
  layers: ReadonlyMap<number, LeafLayers>,
): ClosedLayers {
  const parallel = face ? planes.filter((plane) => areParallel(face, plane)) : [];
  if (!face || planes.length < 2)
    return { most: Math.max(0, ...[...layers.values()].map(({ most }) => most)) };
  const through = depthsOf(face, parallel);
  const sum = (of: keyof LeafLayers) =>
    Math.max(
      0,
      ...through.map((over) => over.reduce((total, leaf) => total + (layers.get(leaf)?.[of] ?? 0), 0)),
    );
  return { atSpine: sum('beside'), most: sum('most') };
}

/** The leaves that lie over each other, for every cell into which their boxes cut the ground. */
function depthsOf(face: LeafPlane, parallel: readonly LeafPlane[]): readonly (readonly number[])[] {
  const grounds = parallel.map((plane) => ({ leaf: plane.leaf, ...groundBox(face, plane) }));
  const middles = (values: readonly number[]) =>
    values
      .toSorted((p, q) => p - q)
      .flatMap((value, index, sorted) => {
        const next = sorted[index + 1] ?? value;
        return next - value > TOUCH ? [(value + next) / 2] : [];
      });
  const columns = middles(grounds.flatMap(({ left, right }) => [left, right]));
  const rows = middles(grounds.flatMap(({ top, bottom }) => [top, bottom]));
  return columns.flatMap((x) =>
    rows.map((y) =>
      grounds
        .filter(({ left, right, top, bottom }) => x > left && x < right && y > top && y < bottom)
        .map(({ leaf }) => leaf),
    ),
  );
}
