import type { Box, Spot } from '../../shared/nesting/box.ts';

/** Everything that is wrong with a packing of one rectangle, pair by pair; `all` asks for every copy. */
export function packingFaults(
  boxes: readonly Box[],
  spots: readonly Spot[],
  width: number,
  height: number,
  all: boolean,
): string[] {
  const faults: string[] = [];
  const counts = boxes.map(() => 0);
  spots.forEach((spot, index) => {
    const box = boxes[spot.box];
    if (box === undefined) {
      faults.push(`${index}: no such box`);
      return;
    }
    counts[spot.box] = (counts[spot.box] ?? 0) + 1;
    const [across, along] = spot.turned ? [box.height, box.width] : [box.width, box.height];
    if (spot.width !== across || spot.height !== along) faults.push(`${index}: wrong size`);
    if (spot.turned && !box.turns) faults.push(`${index}: may not turn`);
    if (spot.x < 0 || spot.y < 0 || spot.x + spot.width > width || spot.y + spot.height > height)
      faults.push(`${index}: outside`);
    for (const other of spots.slice(0, index))
      if (
        spot.x < other.x + other.width &&
        other.x < spot.x + spot.width &&
        spot.y < other.y + other.height &&
        other.y < spot.y + spot.height
      )
        faults.push(`${index}: overlaps`);
  });
  boxes.forEach((box, index) => {
    const count = counts[index] ?? 0;
    if (count > box.count || (all && count < box.count))
      faults.push(`box ${index}: ${count} of ${box.count}`);
  });
  return faults;
}

/** Whether straight cuts, each from edge to edge of what is left, part all rectangles. */
export function cutsThrough(spots: readonly Spot[]): boolean {
  if (spots.length <= 1) return true;
  const parts = (start: 'x' | 'y', side: 'width' | 'height') => {
    const sorted = spots.toSorted((one, other) => one[start] - other[start]);
    let end = Number.NEGATIVE_INFINITY;
    for (const [index, spot] of sorted.entries()) {
      if (index > 0 && spot[start] >= end) return [sorted.slice(0, index), sorted.slice(index)] as const;
      end = Math.max(end, spot[start] + spot[side]);
    }
    return undefined;
  };
  const halves = parts('x', 'width') ?? parts('y', 'height');
  return halves?.every(cutsThrough) ?? false;
}
