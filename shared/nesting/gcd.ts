/** The greatest whole number that divides all of these; 1 for none. */
export function gcdOf(numbers: readonly number[]): number {
  let common = 0;
  for (const number of numbers) {
    let [a, b] = [common, number];
    while (b > 0) [a, b] = [b, a % b];
    common = a;
    if (common === 1) break;
  }
  return common === 0 ? 1 : common;
}
