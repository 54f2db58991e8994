/** The middle value; of an even count the mean of the two in the middle. NaN for none. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((one, other) => one - other);
  const middle = sorted.length / 2;
  const [below, above] = [sorted[Math.ceil(middle) - 1], sorted[Math.floor(middle)]];
  return below === undefined || above === undefined ? Number.NaN : (below + above) / 2;
}
