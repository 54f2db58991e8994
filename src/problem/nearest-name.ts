/** A name longer than this is no slip of one that we know, and comparing it would only cost time. */
const longestCompared = 64;

/** Optimal string alignment: the fewest insertions, deletions, changes and swaps of neighbours between two names. */
export function editDistance(a: string, b: string): number {
  let older: number[] = [];
  let old = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const now = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      now[column] = Math.min(
        (old[column] ?? 0) + 1,
        (now[column - 1] ?? 0) + 1,
        (old[column - 1] ?? 0) + (same ? 0 : 1),
        swapped ? (older[column - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
      );
    }
    older = old;
    old = now;
  }
  return old[b.length] ?? 0;
}

/** The known names from the nearest to the farthest; capitals and dashes do not count. */
export function byNearness(name: string, known: readonly string[]): readonly { name: string; far: number }[] {
  const plain = (text: string) => text.toLowerCase().replaceAll(/[-_\s]/g, '');
  if (name.length > longestCompared) return known.map((each) => ({ name: each, far: name.length }));
  return known
    .map((each) => ({ name: each, far: editDistance(plain(name), plain(each)) }))
    .toSorted((a, b) => a.far - b.far);
}

/** The known name that was most likely meant: at most a third of the letters differ. */
export function nearestName(name: string, known: readonly string[]): string | undefined {
  const [nearest] = byNearness(name, known);
  return nearest && nearest.far <= Math.max(1, Math.floor(name.length / 3)) ? nearest.name : undefined;
}
