import { type Contour, isCurve } from '../geometry/contour.ts';
import { walk } from '../geometry/walk.ts';
import type { OpenLine } from './lines-once.ts';
import { type Placement, place } from './placement.ts';

/**
 * A contour as path data of absolute M, L, C and Z. What rounding leaves no length of is left out, a contour that
 * is nothing else is empty text, and Z stands for a last straight stretch.
 */
export function contourData(contour: Contour, placement: Placement): string {
  const start = place(placement, contour.start);
  const commands: string[] = [];
  let here = start;
  walk(contour, (_, stretch) => {
    const to = place(placement, stretch.to);
    if (isCurve(stretch)) {
      const [one, other] = stretch.control.map((point) => place(placement, point));
      if (to === here && one === here && other === here) return;
      commands.push(`C ${one} ${other} ${to}`);
    } else {
      if (to === here) return;
      commands.push(`L ${to}`);
    }
    here = to;
  });
  if (here === start && commands.at(-1)?.startsWith('L')) commands.pop();
  return commands.length === 0 ? '' : [`M ${start}`, ...commands, 'Z'].join(' ');
}

/** An open line as path data of absolute M, L and C; what rounding leaves no length of is left out. */
export function openLineData({ start, stretches }: OpenLine, placement: Placement): string {
  let here = place(placement, start);
  const commands: string[] = [`M ${here}`];
  for (const stretch of stretches) {
    const to = place(placement, stretch.to);
    if (isCurve(stretch)) {
      const [one, other] = stretch.control.map((point) => place(placement, point));
      commands.push(`C ${one} ${other} ${to}`);
    } else if (to !== here) commands.push(`L ${to}`);
    here = to;
  }
  return commands.length === 1 ? '' : commands.join(' ');
}
