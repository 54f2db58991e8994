/** A place where something was found, in pixels. */
export interface Found {
  /** Of the finding, as the notes number it. */
  readonly number: number;
  /** It must not be cut so. */
  readonly refuses: boolean;
  readonly x: number;
  readonly y: number;
}

/** Middles of badges are this far apart at least. */
const apart = 20;

type Spot = Pick<Found, 'x' | 'y'>;

/** Spots around one, toward the middle of a picture first. */
function spotsAround({ x, y }: Spot, middle: Spot, count: number): readonly Spot[] {
  const [across, down] = [x > middle.x ? -apart : apart, y > middle.y ? -apart : apart];
  return Array.from({ length: count }, (_, far) => [
    { x: x + far * across, y },
    { x, y: y + far * down },
    { x: x + far * across, y: y + far * down },
  ]).flat();
}

/**
 * Puts one number for each finding so that no two lie over each other.
 * @param middle of the picture
 */
export function placeBadges(found: readonly Found[], middle: Spot): readonly Found[] {
  const badges: Found[] = [];
  const isFree = ({ x, y }: Spot): boolean =>
    badges.every((badge) => Math.hypot(badge.x - x, badge.y - y) >= apart);
  for (const number of [...new Set(found.map((each) => each.number))].toSorted((a, b) => a - b)) {
    const places = found.filter((each) => each.number === number);
    const [first] = places;
    if (!first) continue;
    const start = places.find(isFree) ?? first;
    const { x, y } = spotsAround(start, middle, 2 + badges.length).find(isFree) ?? start;
    badges.push({ ...first, x, y });
  }
  return badges;
}
