import type { Nm } from '../../lengths/nanometres.ts';
import { rectangle } from '../common/blank.ts';

type Corner = readonly [number, number];

/** So many straight stretches make the notch: none is further than 0.11 mm from a half circle of 13 mm. */
const stretches = 12;

/**
 * The convex pieces of a front whose upper edge has a notch of half a circle in its middle: what lies below the notch, what
 * lies beside it, and the slices around it.
 */
export function notchedFront(left: Nm, right: Nm, bottom: Nm, radius: Nm): readonly (readonly Corner[])[] {
  if (radius === 0) return [rectangle(left, 0, right, bottom)];
  const middle = Math.round((left + right) / 2);
  const arc = Array.from({ length: stretches + 1 }, (_, index): Corner => {
    const angle = (Math.PI * index) / stretches;
    const [across, down] = [-radius * Math.cos(angle), radius * Math.sin(angle)];
    return [middle + Math.round(across), Math.round(down)];
  });
  const slices = arc.slice(1).map((to, index): readonly Corner[] => {
    const from = arc[index] ?? to;
    return [
      from,
      to,
      ...(to[1] === radius ? [] : [[to[0], radius] as const]),
      ...(from[1] === radius ? [] : [[from[0], radius] as const]),
    ];
  });
  return [
    rectangle(left, radius, right, bottom),
    rectangle(left, 0, middle - radius, radius),
    rectangle(middle + radius, 0, right, radius),
    ...slices,
  ];
}
