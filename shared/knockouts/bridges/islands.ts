import { signedArea } from '../../geometry/area.ts';
import { type Bounds, contourBounds } from '../../geometry/bounds.ts';
import type { Contour, Shape } from '../../geometry/contour.ts';
import { windingAround } from '../../geometry/inside.ts';

/** A piece of paper that falls out when a figure is cut, since the cut runs all around it. */
export interface Island {
  /** The counter that bounds it, by its place in the figure. */
  readonly contour: number;
  readonly bounds: Bounds;
  /** Of the paper that falls, in nm²: without openings inside it. */
  readonly area: number;
}

/** How a figure's contours lie in each other. */
export interface Nesting {
  /** Counters of the figure, by their places in it. */
  readonly counters: readonly number[];
  /** The outer contour that a counter is cut into, or the counter that an outer contour lies in. */
  readonly around: ReadonlyMap<number, number>;
  readonly areas: readonly number[];
}

/** Which contour lies directly in which: in the smallest of the other kind that contains it. */
export function nestingOf(shape: Shape): Nesting {
  const areas = shape.map(signedArea);
  const bounds = shape.map(contourBounds);
  const sizeOf = (index: number): number => Math.abs(areas[index] ?? 0);
  const ascending = [...shape.keys()].sort((one, other) => sizeOf(one) - sizeOf(other));
  const around = new Map<number, number>();
  for (const [place, index] of ascending.entries()) {
    const isOuter = (areas[index] ?? 0) > 0;
    for (let i = place + 1; i < ascending.length; i++) {
      const other = ascending[i] ?? -1;
      if ((areas[other] ?? 0) > 0 === isOuter || !contains(bounds[other], bounds[index])) continue;
      const [inner, outer] = [shape[index], shape[other]];
      if (!inner || !outer || !liesIn(inner, outer)) continue;
      around.set(index, other);
      break;
    }
  }
  return { counters: shape.flatMap((_, index) => ((areas[index] ?? 0) < 0 ? [index] : [])), around, areas };
}

/** Every piece of paper that would fall out of a figure when it is cut: one for each counter. */
export function islandsOf(shape: Shape): readonly Island[] {
  if (shape.every((contour) => signedArea(contour) > 0)) return [];
  const { counters, around, areas } = nestingOf(shape);
  return counters.flatMap((index) => {
    const contour = shape[index];
    if (!contour) return [];
    const openings = shape.reduce(
      (sum, _, other) => (around.get(other) === index ? sum + (areas[other] ?? 0) : sum),
      0,
    );
    return [{ contour: index, bounds: contourBounds(contour), area: Math.abs(areas[index] ?? 0) - openings }];
  });
}

const contains = (outer: Bounds | undefined, inner: Bounds | undefined): boolean =>
  outer !== undefined &&
  inner !== undefined &&
  outer.left <= inner.left &&
  outer.top <= inner.top &&
  outer.right >= inner.right &&
  outer.bottom >= inner.bottom;

/** Contours may touch in single points, so that no one point of them decides. */
function liesIn(inner: Contour, outer: Contour): boolean {
  const points = inner.stretches.slice(0, 3).map(({ to }) => to);
  const inside = points.filter((p) => windingAround(outer, p) !== 0);
  return 2 * inside.length > points.length;
}
