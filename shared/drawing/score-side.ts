import type { Convention } from './convention.ts';

/** Which scores are made from the right side of the sheet as it lies, and what to do about the others. */
export interface ScoreSide {
  readonly up: 'inside' | 'outside';
  readonly right: 'score-valley' | 'score-mountain';
  readonly note: string;
}

/**
 * Printers fold toward the raised bead, so that the groove which the tool presses is outside the fold. With
 * the inside face up a mountain has its groove outside, with the outside face up a valley has. Common practice;
 * soft papers fold well either way.
 */
export function scoreSideOf(convention: Pick<Convention, 'sheetLies' | 'score'> = {}): ScoreSide {
  const up = convention.sheetLies === 'outside-up' ? 'outside' : 'inside';
  const [right, other] =
    up === 'inside' ? (['mountain', 'valley'] as const) : (['valley', 'mountain'] as const);
  return {
    up,
    right: `score-${right}`,
    note:
      convention.score?.as === 'perforation'
        ? `A perforated fold opens outward: with the ${up} face up the ${right} scores are cut from the outside of their fold, the ${other} scores from its inside.`
        : `With the ${up} face up the ${right} scores have their groove outside the fold, as is best; stiff paper takes the ${other} scores better from its other face.`,
  };
}
