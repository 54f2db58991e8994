/** How much of the page, in millimetres, a scene may take. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

const NM_PER_MM = 1e6;

/**
 * Page millimetres for one real millimetre so that something fits its room: a whole number of times real size, at
 * most three times, or a whole number of twentieths of it.
 * @param width nanometres
 * @param height nanometres
 */
export function ratioFor(width: number, height: number, room: Room): number {
  const fit = Math.min((room.width * NM_PER_MM) / width, (room.height * NM_PER_MM) / height);
  if (fit >= 1) return Math.min(3, Math.floor(fit));
  return fit >= 0.05 ? Math.floor(fit * 20) / 20 : fit;
}
