import type { Control, Steps } from './control.ts';
import { fillByOutline, type PlaceRule, placeRules } from './fill-by-outline.ts';
import { mayLie, type Room } from './job.ts';
import { areaOf, isIrregular, liesIn, type OutlineJob, placedPattern } from './outline-job.ts';
import { type PlacedPattern, type PlacedPlan, placedPlan } from './placed-plan.ts';
import type { Random } from './random.ts';
import { restByBoxes } from './rest-by-boxes.ts';
import type { Stance } from './stance.ts';

/** One way of filling sheet after sheet. */
export interface Attempt {
  /** Numbers of boxes. */
  readonly order: readonly number[];
  readonly stances: readonly (readonly Stance[])[];
  readonly rule: PlaceRule;
}

const rules = Object.values(placeRules);

/** Ways that leave nothing to chance. */
export const plainAttempts = rules.length;

/** The first ways go by area with each rule; later ones change order, turns and rule by chance. */
export function attemptNumber(all: OutlineJob, turn: number, random: Random): Attempt {
  const stir = turn < plainAttempts ? 0 : 0.8;
  const first = turn % 2 === 0 ? 1e6 : 1;
  const sizes = all.stances.map(
    ([stance], box) =>
      (stance === undefined ? 0 : stance.width * stance.height) *
      (1 + stir * (random.next() - 0.5)) *
      (isIrregular(all, box) ? first : 1),
  );
  const fewer = all.stances.map((list) => {
    const upright = list.filter((stance) => stance.turn % 180 === 0);
    const onSide = list.filter((stance) => stance.turn % 180 !== 0);
    const kept = [list, list, upright, onSide][stir === 0 ? 0 : random.below(4)] ?? [];
    return kept.length === 0 ? list : kept;
  });
  return {
    order: sizes.map((_, box) => box).sort((one, other) => (sizes[other] ?? 0) - (sizes[one] ?? 0)),
    stances: fewer,
    rule: rules[turn < plainAttempts ? turn : random.below(plainAttempts)] ?? placeRules.lowest,
  };
}

/**
 * Fills sheet after sheet as long as pieces with outlines wait; the rest is nested as boxes.
 * @param counts copies to place, by number of the box
 * @param stock sheets there are, by number of the sheet
 * @param restShare of the evaluations left, what the rest may take
 * @returns undefined when it was stopped
 */
export function* carriedOut(
  all: OutlineJob,
  { order, stances, rule }: Attempt,
  counts: readonly number[],
  stock: ReadonlyMap<number, number>,
  restShare: number,
  control: Control,
): Steps<PlacedPlan | undefined> {
  const { spec, job, rooms, noFits, nestBoxes } = all;
  const left = [...counts];
  const sheets = new Map(stock);
  const there = (room: number) => sheets.get(job.rooms[room]?.sheet ?? -1) ?? 0;
  const patterns: PlacedPattern[] = [];
  const waits = (box: number) => (left[box] ?? 0) > 0 && isIrregular(all, box);
  for (;;) {
    const room = rooms.find(
      (each) => there(each) > 0 && order.some((box) => waits(box) && liesIn(all, each, stances[box] ?? [])),
    );
    if (room === undefined) break;
    const allowed = order.filter((box) => mayLie(job, job.rooms[room] as Room, box));
    const lying = yield* fillByOutline(areaOf(all, room), left, allowed, stances, noFits, rule, control);
    if (lying === undefined) return undefined;
    if (lying.length === 0) break;
    const used = Map.groupBy(lying, ({ stance }) => stance.box);
    const repeats = Math.min(...[...used].map(([box, list]) => Math.floor((left[box] ?? 0) / list.length)));
    const times = Math.min(repeats, there(room));
    for (const [box, list] of used) left[box] = (left[box] ?? 0) - times * list.length;
    sheets.set(job.rooms[room]?.sheet ?? -1, there(room) - times);
    patterns.push(placedPattern(all, room, lying, times));
  }
  if (left.every((count) => count === 0)) return { patterns, left };
  const plan = yield* restByBoxes(job, left, sheets, nestBoxes, restShare, control);
  if (control.stop !== undefined) return undefined;
  const rest = placedPlan(spec, job, plan);
  return { patterns: [...patterns, ...rest.patterns], left: rest.left };
}
