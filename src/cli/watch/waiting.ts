import type { Look, SpecGroup } from './look.ts';
import type { Outcome } from './spec-outcome.ts';

/** How long a spec must be unchanged before it is read: editors and copies write in steps that are shorter. */
const quietMs = 500;

/** How long before a refusal is believed: what is refused may be half a file whose writer is slow. */
const ripeMs = 2_000;

/** When to try again what the spec is not to blame for, such as a full disk or a file that is held by a program. */
const againMs = 10_000;

/** A name of which something is to be done, or was. */
export interface Waiting {
  readonly group: SpecGroup;
  /** Since when the specs are as they are. */
  readonly sinceMs: number;
  /** When to do it; undefined once there is nothing to do before the specs change. */
  readonly dueMs: number | undefined;
  /** The outcome of the last time. */
  readonly last?: Outcome;
  /** What had the name of the drawing when that stood in the way. */
  readonly blockedBy?: string;
}

/** Every name in the folder. Times are milliseconds of one clock that only goes forward. */
export type WaitingList = ReadonlyMap<string, Waiting>;

const begun = (group: SpecGroup, sinceMs: number): Waiting => ({ group, sinceMs, dueMs: sinceMs + quietMs });

/**
 * The list after a look at the folder: a name that is new, or has changed, waits anew.
 * @param agesMs for the first look, how long ago a file changed, as far as its file system knows
 */
export const afterLook = (
  list: WaitingList,
  { groups }: Look,
  nowMs: number,
  ageMs: (group: SpecGroup) => number = () => 0,
): WaitingList =>
  new Map(
    [...groups].map(([base, group]) => {
      const before = list.get(base);
      return [base, before?.group.print === group.print ? before : begun(group, nowMs - ageMs(group))];
    }),
  );

/** The names that a look no longer shows. */
export const goneSince = (list: WaitingList, { groups }: Look): readonly string[] =>
  [...list.keys()].filter((base) => !groups.has(base));

/** What is to be done now, longest due first. */
export const dueNow = (list: WaitingList, nowMs: number): readonly Waiting[] =>
  [...list.values()]
    .filter(({ dueMs }) => dueMs !== undefined && dueMs <= nowMs)
    .toSorted((one, other) => (one.dueMs ?? 0) - (other.dueMs ?? 0));

/** Whether a refusal would be believed. */
export const isRipe = ({ sinceMs }: Waiting, nowMs: number): boolean => nowMs - sinceMs >= ripeMs;

/** When the next is due; undefined when none is. */
export const nextDueMs = (list: WaitingList): number | undefined => {
  const times = [...list.values()].flatMap(({ dueMs }) => dueMs ?? []);
  return times.length === 0 ? undefined : times.reduce((one, other) => Math.min(one, other));
};

function dueAfter({ sinceMs }: Waiting, outcome: Outcome, nowMs: number): number | undefined {
  if (outcome.is === 'moving') return nowMs + quietMs;
  if (outcome.is === 'unripe') return sinceMs + ripeMs;
  return 'retry' in outcome && outcome.retry === 'later' ? nowMs + againMs : undefined;
}

/** A name after something was done. */
export function afterOutcome(
  waiting: Waiting,
  outcome: Outcome,
  nowMs: number,
  drawingPrint: string,
): Waiting {
  const { group, sinceMs } = waiting;
  const isBlocked = 'retry' in outcome && outcome.retry === 'when-name-is-free';
  return {
    group,
    sinceMs,
    dueMs: dueAfter(waiting, outcome, nowMs),
    last: outcome,
    ...(isBlocked ? { blockedBy: drawingPrint } : {}),
  };
}

/** A name whose drawing was blocked, now that something else has the drawing's name, or nothing. */
export const unblocked = (waiting: Waiting, nowMs: number): Waiting => begun(waiting.group, nowMs);

const isSettled = ({ last }: Waiting) => last !== undefined && last.is !== 'moving' && last.is !== 'unripe';

/** How many are still to be done. */
export const left = (list: WaitingList): number =>
  [...list.values()].filter((each) => !isSettled(each)).length;

/** How many had that outcome the last time. */
export const count = (list: WaitingList, is: Outcome['is']): number =>
  [...list.values()].filter(({ last }) => last?.is === is).length;
