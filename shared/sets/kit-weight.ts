import { NM_PER_MM } from '../lengths/nanometres.ts';
import { grammageOf } from '../paper/basis-weight.ts';
import type { CutPiece } from './cut-piece.ts';
import type { SetPaper, SetSpec } from './set-spec.ts';

const SQUARE_NM_PER_SQUARE_METRE = (1000 * NM_PER_MM) ** 2;

/** What a square metre of a paper weighs, in grammes, where that is known. */
const weightOf = ({ grammage, basisWeight }: SetPaper): number | undefined =>
  grammage ?? (basisWeight === undefined ? undefined : grammageOf(basisWeight));

/** What the pieces of one kit weigh, in grammes, and the names of those of whose paper no weight is known. */
export function kitWeight(
  set: SetSpec,
  pieces: readonly CutPiece[],
): { readonly grammes: number; readonly unknown: readonly string[] } {
  let grammes = 0;
  const unknown: string[] = [];
  for (const { name, paper, area, spec } of pieces) {
    const own = set.papers[paper];
    const weight = own && weightOf(own);
    if (weight === undefined) unknown.push(name);
    else grammes += (area / SQUARE_NM_PER_SQUARE_METRE) * weight * spec.perKit;
  }
  return { grammes: Number(grammes.toFixed(1)), unknown };
}
