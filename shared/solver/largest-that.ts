/**
 * The largest whole number from 1 to `most` that works, or 0. What works for a number must work for every
 * smaller one.
 */
export function largestThat(works: (count: number) => boolean, most: number): number {
  let [good, bad] = [0, most + 1];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (works(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
