/** A queue that gives the item with the highest rank first; of equal ranks the one that came first. */
export interface Heap<Item> {
  readonly push: (item: Item) => void;
  readonly pop: () => Item | undefined;
}

interface Ranked<Item> {
  readonly item: Item;
  readonly rank: number;
  readonly came: number;
}

export function heapBy<Item>(rankOf: (item: Item) => number): Heap<Item> {
  const heap: Ranked<Item>[] = [];
  let came = 0;
  const before = (one: Ranked<Item>, other: Ranked<Item>) =>
    one.rank > other.rank || (one.rank === other.rank && one.came < other.came);
  const at = (index: number) => heap[index] as Ranked<Item>;

  const push = (item: Item): void => {
    const added = { item, rank: rankOf(item), came: came++ };
    let index = heap.length;
    heap.push(added);
    while (index > 0) {
      const parent = (index - 1) >> 1;
      if (!before(added, at(parent))) break;
      heap[index] = at(parent);
      index = parent;
    }
    heap[index] = added;
  };

  const pop = (): Item | undefined => {
    const top = heap[0];
    const last = heap.pop();
    if (top === undefined || last === undefined) return undefined;
    if (heap.length === 0) return top.item;
    let index = 0;
    for (;;) {
      let child = 2 * index + 1;
      if (child >= heap.length) break;
      if (child + 1 < heap.length && before(at(child + 1), at(child))) child++;
      if (!before(at(child), last)) break;
      heap[index] = at(child);
      index = child;
    }
    heap[index] = last;
    return top.item;
  };
  return { push, pop };
}
