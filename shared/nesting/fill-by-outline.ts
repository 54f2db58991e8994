import type { Paths64 } from 'clipper2-ts';
import { type Control, type Steps, spend } from './control.ts';
import { allPositions, cornersOf, movedTo, type Position, type Range, withoutPositions } from './no-fit.ts';
import type { NoFits, Stance } from './stance.ts';

/** A piece where it lies, in steps from the corner of the usable area. */
export interface Lying extends Position {
  readonly stance: Stance;
}

/** The usable area of a sheet, in steps. */
export interface Area {
  readonly width: number;
  readonly height: number;
}

/** More copies than this on one sheet are not nested by their outlines: too much time for each. */
const mostOnSheet = 500;

/** What a place is judged by, least first; a later number counts where those before are equal. */
export type PlaceRule = (x: number, y: number, stance: Stance) => readonly [number, number];

export const placeRules = {
  lowest: (x, y, { width, height }) => [y + height, x + width],
  leftmost: (x, y, { width, height }) => [x + width, y + height],
  nearest: (x, y, { width, height }) => [x + width + y + height, Math.abs(x + width - y - height)],
} as const satisfies Record<string, PlaceRule>;

/**
 * Fills one sheet with copies that are left, each box as often as it goes, one after the other where the rule likes it best.
 * @param order numbers of boxes that may lie on this sheet
 * @returns undefined when it was stopped
 */
export function* fillByOutline(
  area: Area,
  left: readonly number[],
  order: readonly number[],
  stances: readonly (readonly Stance[])[],
  noFits: NoFits,
  rule: PlaceRule,
  control: Control,
): Steps<readonly Lying[] | undefined> {
  const lying: Lying[] = [];
  for (const box of order) {
    const choices: Choice[] = [];
    for (const stance of stances[box] ?? []) {
      const choice = yield* choiceOf(area, stance, lying, noFits, control);
      if (choice === undefined) return undefined;
      choices.push(choice);
    }
    for (let copies = left[box] ?? 0; copies > 0 && lying.length < mostOnSheet; copies--) {
      const next = bestPlace(choices, rule);
      if (!(yield* spend(control, costOf(choices))) && control.stop !== undefined) return undefined;
      if (next === undefined) break;
      lying.push(next);
      for (const choice of choices) if (!(yield* takeAway(choice, next, noFits, control))) return undefined;
    }
  }
  return lying;
}

/** A stance with the positions that are free for it. */
interface Choice {
  readonly stance: Stance;
  readonly range: Range;
  free: Paths64;
}

/** @returns undefined when it was stopped */
function* choiceOf(
  area: Area,
  stance: Stance,
  lying: readonly Lying[],
  noFits: NoFits,
  control: Control,
): Steps<Choice | undefined> {
  const range = { across: area.width - stance.width, along: area.height - stance.height };
  const all = allPositions(range);
  if (all.length === 0) return { stance, range, free: all };
  const forbidden: Paths64 = [];
  for (const other of lying) {
    const paths = yield* noFits(other.stance, stance, control);
    if (paths === undefined) return undefined;
    forbidden.push(...movedTo(paths, other));
  }
  return { stance, range, free: withoutPositions(all, forbidden) };
}

/**
 * One after the other: what is free has far fewer corners than all that is forbidden.
 * @returns false when it was stopped
 */
function* takeAway(choice: Choice, other: Lying, noFits: NoFits, control: Control): Steps<boolean> {
  if (choice.free.length === 0) return true;
  const paths = yield* noFits(other.stance, choice.stance, control);
  if (paths === undefined) return false;
  choice.free = withoutPositions(choice.free, movedTo(paths, other));
  return true;
}

/** Corners that cost as much to look at as one evaluation. */
const cornersPerEvaluation = 400;

const costOf = (choices: readonly Choice[]): number =>
  1 +
  choices.reduce((sum, { free }) => sum + free.reduce((all, path) => all + path.length, 0), 0) /
    cornersPerEvaluation;

function bestPlace(choices: readonly Choice[], rule: PlaceRule): Lying | undefined {
  let best: Lying | undefined;
  let [first, second] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { stance, range, free } of choices)
    for (const { x, y } of cornersOf(free, range)) {
      const [one, two] = rule(x, y, stance);
      if (one > first || (one === first && two >= second)) continue;
      [first, second, best] = [one, two, { x, y, stance }];
    }
  return best;
}
