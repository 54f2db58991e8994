import { type Control, goesOn, type Steps } from './control.ts';
import type { NestPiece } from './nest-spec.ts';
import { pieceArea } from './outline.ts';
import { attemptNumber, carriedOut, plainAttempts } from './outline-attempt.ts';
import type { OutlineJob } from './outline-job.ts';
import type { PlacedPattern, PlacedPlan } from './placed-plan.ts';
import { sheetsOf } from './plan.ts';
import type { Random } from './random.ts';

/** Trials without success after which the plan is left as it is. */
const patience = 60;

/** What rectangles that are left over may take of the evaluations, each time. */
const restShare = 0.01;

/**
 * Ruin and recreate with outlines: takes two to four sheets apart, the emptiest among them, and fills sheets anew with their
 * pieces; keeps what takes no more sheets and fills them less evenly, since that is how a sheet comes to be saved.
 */
export function* mendOutlines(
  all: OutlineJob,
  start: PlacedPlan,
  random: Random,
  control: Control,
): Steps<PlacedPlan> {
  const { spec, job } = all;
  const boxOf = new Map(job.pieceOf.map((piece, box) => [piece, box]));
  const fill = ({ placed, room }: PlacedPattern) =>
    placed.reduce((sum, { piece }) => sum + pieceArea(spec.pieces[piece] as NestPiece), 0) /
    ((job.rooms[room]?.area ?? 1) * job.unit ** 2);
  const unevenness = (patterns: readonly PlacedPattern[]) =>
    patterns.reduce((sum, pattern) => sum + pattern.times * fill(pattern) ** 2, 0);

  let best = start;
  for (let idle = 0; idle < patience && goesOn(control) && sheetsOf(best) > control.bound; idle++) {
    const { taken, kept } = takenApart(best.patterns, fill, random);
    const counts = [...best.left];
    for (const { placed } of taken)
      for (const { piece } of placed) {
        const box = boxOf.get(piece) ?? 0;
        counts[box] = (counts[box] ?? 0) + 1;
      }
    const stock = new Map(job.stock);
    for (const { room, times } of kept) {
      const sheet = job.rooms[room]?.sheet ?? -1;
      stock.set(sheet, (stock.get(sheet) ?? 0) - times);
    }
    const attempt = attemptNumber(all, plainAttempts + random.below(2), random);
    const part = yield* carriedOut(all, attempt, counts, stock, restShare, control);
    if (part === undefined) break;
    const sum = (list: readonly number[]) => list.reduce((total, count) => total + count, 0);
    const change =
      sum(part.left) - sum(best.left) ||
      sheetsOf(part) - taken.length ||
      unevenness(taken) - unevenness(part.patterns);
    if (change >= -1e-12) continue;
    idle = -1;
    best = { patterns: [...kept, ...part.patterns], left: part.left };
    control.sheets = sheetsOf(best);
  }
  return best;
}

/** The emptiest sheet and one to three others, each by itself; and what is left of the plan. */
function takenApart(
  patterns: readonly PlacedPattern[],
  fill: (pattern: PlacedPattern) => number,
  random: Random,
): { readonly taken: readonly PlacedPattern[]; readonly kept: readonly PlacedPattern[] } {
  const kept = [...patterns];
  const taken: PlacedPattern[] = [];
  const draw = (index: number) => {
    const pattern = kept[index];
    if (pattern === undefined) return;
    taken.push({ ...pattern, times: 1 });
    if (pattern.times > 1) kept[index] = { ...pattern, times: pattern.times - 1 };
    else kept.splice(index, 1);
  };
  const fills = kept.map(fill);
  draw(fills.indexOf(Math.min(...fills)));
  for (let more = 1 + random.below(3); more > 0; more--) draw(random.below(kept.length));
  return { taken, kept };
}
