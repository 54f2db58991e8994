import { isOuter } from '../geometry/area.ts';
import type { Contour, Shape } from '../geometry/contour.ts';
import type { Point } from '../geometry/plane.ts';
import { reverse } from '../geometry/walk.ts';
import { nestingOf } from './bridges/islands.ts';
import { startedWell } from './start-point.ts';

/**
 * The openings of a sheet in the order in which they are cut: what lies within something else before it, so that it
 * does not move; among those that lie equally deep always the next nearest, from the sheet's top left corner on.
 * @param paper the sheet with its openings as counters
 * @returns the contours of each opening: what stands in it first, its own outline last
 */
export function openingsInOrder(paper: Shape): readonly (readonly Contour[])[] {
  const { around } = nestingOf(paper);
  const depthOf = (index: number): number => {
    const outer = around.get(index);
    return outer === undefined ? 0 : 1 + depthOf(outer);
  };
  const openings = paper.flatMap((contour, index) => {
    if (isOuter(contour)) return [];
    const standing = paper.filter((_, other) => around.get(other) === index);
    const contours = [...standing, contour].map((each) => startedWell(reverse(each)));
    return [{ contours, depth: depthOf(index) }];
  });
  const depths = [...new Set(openings.map(({ depth }) => depth))].toSorted((one, other) => other - one);
  let here: Point = { x: 0, y: 0 };
  return depths.flatMap((depth) => {
    const left = openings.filter((opening) => opening.depth === depth).map(({ contours }) => contours);
    const ordered: (readonly Contour[])[] = [];
    while (left.length > 0) {
      const [next] = left.splice(nearest(left, here), 1);
      if (!next) break;
      ordered.push(next);
      here = next.at(-1)?.start ?? here;
    }
    return ordered;
  });
}

/** The opening whose cutting begins nearest to a point; the first of several. */
function nearest(openings: readonly (readonly Contour[])[], { x, y }: Point): number {
  const far = openings.map(([first]) =>
    first ? Math.hypot(first.start.x - x, first.start.y - y) : Infinity,
  );
  return far.indexOf(Math.min(...far));
}
