import type { Neighbours } from './faces-across.ts';

/** For each face, those that it runs on into without a crease, itself among them. */
export type Plates = readonly (readonly number[])[];

/** Which faces belong to one stretch of paper that is never folded. */
export function platesOf(neighbours: Neighbours): Plates {
  const plates: (readonly number[] | undefined)[] = neighbours.map(() => undefined);
  for (const start of neighbours.keys()) {
    if (plates[start]) continue;
    const plate = [start];
    for (const face of plate) {
      for (const { edge, other } of neighbours[face] ?? [])
        if (edge.letter === 'F' && !plate.includes(other)) plate.push(other);
    }
    for (const face of plate) plates[face] = plate;
  }
  return plates.map((plate) => plate ?? []);
}
