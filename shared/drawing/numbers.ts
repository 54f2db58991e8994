/**
 * The only place where a drawing's number becomes text: plain decimals, rounded once, no exponent.
 * @throws RangeError for NaN and infinities, so that none ever reaches a machine
 */
export function decimal(value: number, decimals = 3): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing cannot hold the number ${value}`);
  const scale = 10 ** decimals;
  const rounded = Math.round(value * scale) / scale;
  return Math.abs(rounded) < 1e21 ? String(rounded === 0 ? 0 : rounded) : rounded.toFixed(0);
}
