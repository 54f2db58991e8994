import type { Box, Spot } from './box.ts';
import { type Fitting, fitTogether } from './fit-together.ts';
import { countsOf } from './plan.ts';

/** Says which choices of boxes fit on one sheet, and remembers: what fits, fits with less, and what does not, not with more. */
export interface FitOracle {
  /** @param counts copies by number of the box */
  readonly fit: (counts: readonly number[], maxNodes: number) => Fitting;
}

interface Known {
  readonly counts: readonly number[];
  readonly spots: readonly Spot[];
}

/** Answers that are remembered, of each kind. */
const mostKnown = 1000;

export function fitOracle(boxes: readonly Box[], width: number, height: number): FitOracle {
  const fitting: Known[] = [];
  const misfits: (readonly number[])[] = [];
  const open = new Map<string, number>(); // nodes after which a choice was left unsettled

  const fit = (counts: readonly number[], maxNodes: number): Fitting => {
    if (misfits.some((less) => isWithin(less, counts))) return { settled: true, nodes: 0 };
    const more = fitting.find((known) => isWithin(counts, known.counts));
    if (more !== undefined) return { spots: only(more.spots, counts), settled: true, nodes: 0 };
    const key = counts.join(' ');
    if ((open.get(key) ?? 0) >= maxNodes) return { settled: false, nodes: 0 };
    const answer = fitTogether(
      boxes.map((box, index) => ({ ...box, count: counts[index] ?? 0 })),
      width,
      height,
      maxNodes,
    );
    if (answer.spots !== undefined) {
      if (fitting.length < mostKnown)
        fitting.push({ counts: countsOf(answer.spots, boxes.length), spots: answer.spots });
    } else if (!answer.settled) open.set(key, maxNodes);
    else if (misfits.length < mostKnown) misfits.push([...counts]);
    return answer;
  };
  return { fit };
}

const isWithin = (less: readonly number[], more: readonly number[]): boolean =>
  less.every((count, index) => count <= (more[index] ?? 0));

/** So many copies of each box, of those that are there. */
function only(spots: readonly Spot[], counts: readonly number[]): readonly Spot[] {
  const left = [...counts];
  return spots.filter(({ box }) => {
    left[box] = (left[box] ?? 0) - 1;
    return (left[box] ?? 0) >= 0;
  });
}
