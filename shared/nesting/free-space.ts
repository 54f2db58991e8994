export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const within = (one: Rectangle, other: Rectangle): boolean =>
  one.x >= other.x &&
  one.y >= other.y &&
  one.x + one.width <= other.x + other.width &&
  one.y + one.height <= other.y + other.height;

export const overlap = (one: Rectangle, other: Rectangle): boolean =>
  one.x < other.x + other.width &&
  other.x < one.x + one.width &&
  one.y < other.y + other.height &&
  other.y < one.y + one.height;

/**
 * The free space of a sheet as all its largest empty rectangles, which overlap one another, after one more rectangle was
 * taken. Source: Jylänki, "A thousand ways to pack the bin" (2010) (from memory).
 */
export function without(free: readonly Rectangle[], taken: Rectangle): readonly Rectangle[] {
  const kept: Rectangle[] = [];
  const cut: Rectangle[] = [];
  const [right, bottom] = [taken.x + taken.width, taken.y + taken.height];
  for (const space of free) {
    if (!overlap(space, taken)) {
      kept.push(space);
      continue;
    }
    const [end, foot] = [space.x + space.width, space.y + space.height];
    if (taken.x > space.x) cut.push({ ...space, width: taken.x - space.x });
    if (right < end) cut.push({ ...space, x: right, width: end - right });
    if (taken.y > space.y) cut.push({ ...space, height: taken.y - space.y });
    if (bottom < foot) cut.push({ ...space, y: bottom, height: foot - bottom });
  }
  // what was kept lies in no new piece: that piece lies in a space that did not contain it either
  const news = cut.filter(
    (piece, index) =>
      !kept.some((space) => within(piece, space)) &&
      !cut.some((other, at) => at !== index && within(piece, other) && (at < index || !within(other, piece))),
  );
  return [...kept, ...news];
}
