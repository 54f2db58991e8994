import { type Rectangle, without } from './free-space.ts';

/**
 * Rectangles that stay whole beside what is taken: the largest, then the largest of the rest, and so on.
 * @param least a rectangle with a shorter side is no offcut
 */
export function offcutsOf(
  width: number,
  height: number,
  taken: readonly Rectangle[],
  least: number,
): readonly Rectangle[] {
  const large = (space: Rectangle) => Math.min(space.width, space.height) >= least;
  let free = taken.reduce<readonly Rectangle[]>(
    (spaces, rectangle) => without(spaces, rectangle).filter(large),
    [{ x: 0, y: 0, width, height }],
  );
  const offcuts: Rectangle[] = [];
  for (let next = largest(free); next !== undefined; next = largest(free)) {
    offcuts.push(next);
    free = without(free, next).filter(large);
  }
  return offcuts;
}

function largest(spaces: readonly Rectangle[]): Rectangle | undefined {
  let best: Rectangle | undefined;
  for (const space of spaces)
    if (best === undefined || area(space) > area(best) || (area(space) === area(best) && before(space, best)))
      best = space;
  return best;
}

const area = ({ width, height }: Rectangle): number => width * height;

const before = (one: Rectangle, other: Rectangle): boolean =>
  one.y < other.y || (one.y === other.y && one.x < other.x);
