export interface Corner {
  readonly x: number;
  readonly y: number;
}

const sides = (corners: readonly Corner[]) =>
  corners.map((corner, index) => [corner, corners[(index + 1) % corners.length] as Corner] as const);

/** The distance of a point from a stretch. */
function fromStretch(point: Corner, [from, to]: readonly [Corner, Corner]): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / square;
  const at = Math.min(1, Math.max(0, share));
  return Math.hypot(point.x - from.x - at * dx, point.y - from.y - at * dy);
}

const side = ([from, to]: readonly [Corner, Corner], point: Corner): number =>
  Math.sign((to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x));

const cross = (one: readonly [Corner, Corner], other: readonly [Corner, Corner]): boolean =>
  side(one, other[0]) * side(one, other[1]) < 0 && side(other, one[0]) * side(other, one[1]) < 0;

/** Whether a ray from the point crosses the outline an odd number of times; points on the outline are not within. */
const holds = (corners: readonly Corner[], point: Corner): boolean =>
  sides(corners).every((each) => fromStretch(point, each) >= 1) &&
  sides(corners).filter(([from, to]) => {
    if (from.y > point.y === to.y > point.y) return false;
    return point.x < from.x + ((point.y - from.y) / (to.y - from.y)) * (to.x - from.x);
  }).length %
    2 ===
    1;

/** The corners, and a grid of points over the whole extent: two equal outlines have every corner on the other's side. */
function samples(corners: readonly Corner[]): Corner[] {
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const steps = Array.from({ length: 11 }, (_, step) => (step + 0.5) / 11);
  const grid = steps.flatMap((across) =>
    steps.map((along) => ({ x: left + across * wide, y: top + along * high })),
  );
  return [...corners, ...grid.filter((point) => holds(corners, point))];
}

/** The least distance between two outlines, of coordinates far above 1; −1 when they overlap. */
export function distanceApart(one: readonly Corner[], other: readonly Corner[]): number {
  const within =
    samples(one).some((point) => holds(other, point)) || samples(other).some((point) => holds(one, point));
  if (within || sides(one).some((each) => sides(other).some((another) => cross(each, another)))) return -1;
  return Math.min(
    ...one.flatMap((corner) => sides(other).map((each) => fromStretch(corner, each))),
    ...other.flatMap((corner) => sides(one).map((each) => fromStretch(corner, each))),
  );
}
