/** For each item its place when all are sorted by size, the largest first; of equals the one listed first. */
export function ranksBy<Item>(items: readonly Item[], sizeOf: (item: Item) => number): readonly number[] {
  const sizes = items.map(sizeOf);
  const ranks: number[] = [];
  items
    .map((_, index) => index)
    .sort((one, other) => (sizes[other] ?? 0) - (sizes[one] ?? 0) || one - other)
    .forEach((item, rank) => {
      ranks[item] = rank;
    });
  return ranks;
}
