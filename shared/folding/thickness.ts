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

/** A fold at which a leaf is set up, where it lies in the flat form: upright or level, at a place, from and to. */
interface Bend {
  readonly upright: boolean;
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Counts the layers of every leaf, by its number. */
export function layersOfLeaves(
  leaves: readonly number[],
  spots: readonly Spot[],
  joints: readonly Joint[],
): ReadonlyMap<number, LeafLayers> {
  const bends = bendsOf(leaves, joints);
  const found = new Map<number, { beside: number; most: number }>();
  for (const spot of spots) {
    const { stack } = spot;
    const there = stack.map(({ index }) => leaves[index] ?? -1);
    for (const [place, leaf] of there.entries()) {
      // each leaf once
      if (there.indexOf(leaf) !== place) continue;
      let count = 0;
      for (const other of there) if (other === leaf) count++;
      const known = found.get(leaf) ?? { beside: 0, most: 0 };
      found.set(leaf, known);
      if (count > known.most) known.most = count;
      if (count > known.beside && bends.get(leaf)?.some((bend) => isBeside(spot, bend))) known.beside = count;
    }
  }
  return found;
}

/** The folds at which each leaf is set up, each line once. */
function bendsOf(leaves: readonly number[], joints: readonly Joint[]): ReadonlyMap<number, readonly Bend[]> {
  const found = new Map<number, Bend[]>();
  for (const { edge, from, to, one, other } of joints) {
    if (closedAngleOf(edge) % 180 === 0) continue;
    const upright = near(from.x, to.x);
    if (!upright && !near(from.y, to.y)) continue;
    const [p, q] = upright ? [from.y, to.y] : [from.x, to.x];
    const bend = { upright, at: upright ? from.x : from.y, from: Math.min(p, q), to: Math.max(p, q) };
    for (const leaf of new Set([leaves[one.index] ?? -1, leaves[other.index] ?? -1])) {
      const known = found.get(leaf) ?? [];
      found.set(leaf, known);
      const same = known.some(
        (each) =>
          each.upright === upright && each.at === bend.at && each.from === bend.from && each.to === bend.to,
      );
      if (!same) known.push(bend);
    }
  }
  return found;
}

const near = (one: number, other: number): boolean => Math.abs(one - other) <= TOUCH;

/** Whether a cell ends at a fold. */
const isBeside = (spot: Spot, { upright, at, from, to }: Bend): boolean =>
  upright
    ? (near(spot.left, at) || near(spot.right, at)) && spot.y > from && spot.y < to
    : (near(spot.top, at) || near(spot.bottom, at)) && spot.x > from && spot.x < to;

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
