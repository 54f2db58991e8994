/**
 * How many single letters must be put in, left out, replaced or swapped with their neighbour to turn one
 * text into the other (optimal string alignment). Work grows with the product of the lengths: bound them.
 */
export function editDistance(from: string, to: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1];
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      current[column] = Math.min(
        at(last, column) + 1,
        at(current, column - 1) + 1,
        at(last, column - 1) + (same ? 0 : 1),
        swapped ? at(beforeLast, column - 2) + 1 : Number.POSITIVE_INFINITY,
      );
    }
    beforeLast = last;
    last = current;
  }
  return at(last, to.length);
}

const at = (row: readonly number[], column: number): number => row[column] ?? Number.POSITIVE_INFINITY;
