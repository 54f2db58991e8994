import { type Control, goesOn, type Steps } from './control.ts';
import { mendOutlines } from './mend-outlines.ts';
import { attemptNumber, carriedOut } from './outline-attempt.ts';
import type { OutlineJob } from './outline-job.ts';
import type { PlacedPlan } from './placed-plan.ts';
import { sheetsOf } from './plan.ts';
import type { Random } from './random.ts';

/** Ways that are tried without finding a better plan; fewer where only a larger offcut is to be had. */
const patience = { open: 24, proved: 4 };

/** Of the evaluations left, what rectangles may take that are left over. */
const restShare = 0.1;

/** Of the evaluations left, what whole plans get before single sheets are mended. */
const wholeShare = 0.5;

/**
 * Nests pieces by their own outlines, sheet by sheet: each piece where a rule likes it best, in any of its turns, without
 * overlap of outlines. Rectangles fill what room is left on these sheets; the rest of them is nested as boxes. Then some
 * sheets at a time are filled anew.
 * @param known a plan to be beaten
 */
export function* nestOutlines(
  all: OutlineJob,
  known: PlacedPlan,
  random: Random,
  control: Control,
  better: (one: PlacedPlan, other: PlacedPlan) => boolean,
): Steps<PlacedPlan> {
  const { limit, evaluations } = control;
  control.limit = evaluations + wholeShare * (limit - evaluations);
  const counts = all.job.boxes.map(({ count }) => count);
  let best = known;
  const patient = () => (sheetsOf(best) <= control.bound ? patience.proved : patience.open);
  for (let turn = 0, idle = 0; idle < patient() && goesOn(control); turn++, idle++) {
    const attempt = attemptNumber(all, turn, random);
    const plan = yield* carriedOut(all, attempt, counts, all.job.stock, restShare, control);
    if (plan === undefined) break;
    if (!better(plan, best)) continue;
    best = plan;
    idle = -1;
    control.sheets = sheetsOf(best);
  }
  control.limit = limit;
  const mended = yield* mendOutlines(all, best, random, control);
  return better(mended, best) ? mended : best;
}
