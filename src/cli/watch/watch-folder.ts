import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { CommandFailed } from '../read-spec.ts';
import type { ExitCode } from '../run-spec-command.ts';
import { drawSpec, removeProblem } from './draw-spec.ts';
import { drawingName, inOneLine, problemName } from './file-names.ts';
import { lookAt, removeDrafts, type SpecGroup } from './look.ts';
import { printOf } from './own-file.ts';
import {
  afterLook,
  afterOutcome,
  count,
  dueNow,
  goneSince,
  isRipe,
  left,
  nextDueMs,
  unblocked,
  type WaitingList,
} from './waiting.ts';
import { banner, stopped, summary, tell, type WatchTerminal } from './watch-words.ts';

export interface WatchOptions {
  /** Do what is there, and leave. */
  readonly once?: boolean;
}

/** How often the folder is looked at. */
const lookEveryMs = 1_000;

/** A rest is so many times as long as a look at least, for folders that are large or far away. */
const restsPerLook = 20;

/** So that many changes in a row are one look. */
const leastRestMs = 100;

/** With --once, a spec that is still being written after this is given up. */
const longestWaitMs = 30_000;

/** The age of the youngest file of a group by the clocks of file system and machine, which may differ. */
const ageMs = ({ files }: SpecGroup): number =>
  Math.max(0, Date.now() - Math.max(...files.map(({ ctimeMs, trouble }) => (trouble ? Infinity : ctimeMs))));

/** Does what is due, one after the other; the solver takes all of a core anyway. */
async function doDue(
  folder: string,
  list: WaitingList,
  terminal: WatchTerminal,
  stop: AbortSignal,
): Promise<WaitingList> {
  const next = new Map(list);
  for (const waiting of dueNow(list, performance.now())) {
    if (stop.aborted) break;
    const { base } = waiting.group;
    // before the work: what leaves while it is done, or right after, is then seen to have gone
    const drawing = await printOf(join(folder, drawingName(base)));
    const outcome = await drawSpec(folder, waiting.group, isRipe(waiting, performance.now()));
    tell(terminal, waiting, outcome);
    next.set(base, afterOutcome(waiting, outcome, performance.now(), drawing));
  }
  return next;
}

/** The list with every name that was blocked and is so no more waiting anew. */
async function unblock(folder: string, list: WaitingList): Promise<WaitingList> {
  const next = new Map(list);
  for (const [base, waiting] of list)
    if (
      waiting.blockedBy !== undefined &&
      waiting.blockedBy !== (await printOf(join(folder, drawingName(base))))
    )
      next.set(base, unblocked(waiting, performance.now()));
  return next;
}

/** A problem of a spec that is gone is none. Its drawing stays: somebody may want it. */
async function forget(
  folder: string,
  bases: readonly string[],
  { show, report }: WatchTerminal,
): Promise<void> {
  for (const base of bases)
    try {
      if (await removeProblem(folder, base))
        show(`${inOneLine(problemName(base))}: taken away, as its spec is gone\n`);
    } catch (error) {
      if (!(error instanceof CommandFailed)) throw error;
      report(`${inOneLine(error.message)}\n`);
    }
}

/** Waits until something is due or the next look is, and not at all once it is to stop. */
async function rest(list: WaitingList, lookMs: number, stop: AbortSignal): Promise<void> {
  const untilLook = Math.max(lookEveryMs, lookMs * restsPerLook);
  const untilDue = (nextDueMs(list) ?? Number.POSITIVE_INFINITY) - performance.now();
  await pause(Math.max(leastRestMs, Math.min(untilLook, untilDue)), undefined, { signal: stop }).catch(
    () => undefined,
  );
}

/** The names of the first look, for a run that leaves later ones to the next. */
const only = (list: WaitingList, bases: ReadonlySet<string>): WaitingList =>
  new Map([...list].filter(([base]) => bases.has(base)));

async function work(
  folder: string,
  { once }: WatchOptions,
  terminal: WatchTerminal,
  stop: AbortSignal,
): Promise<WaitingList> {
  const startMs = performance.now();
  const first = await lookAt(folder);
  if (!once) terminal.show(banner(inOneLine(folder)));
  await removeDrafts(folder);
  await forget(
    folder,
    first.problems.filter((base) => !first.groups.has(base)),
    terminal,
  );
  let list = afterLook(new Map(), first, startMs, ageMs);
  let lookMs = performance.now() - startMs;
  for (;;) {
    list = await doDue(folder, await unblock(folder, list), terminal, stop);
    const nowMs = performance.now();
    if (stop.aborted) return list;
    if (once && (left(list) === 0 || (nowMs - startMs > longestWaitMs && dueNow(list, nowMs).length === 0)))
      return list;
    await rest(list, lookMs, stop);
    if (stop.aborted) return list;
    const lookedMs = performance.now();
    const look = await lookAt(folder);
    lookMs = performance.now() - lookedMs;
    await forget(folder, goneSince(list, look), terminal);
    list = afterLook(list, look, lookedMs);
    if (once) list = only(list, new Set(first.groups.keys()));
  }
}

function codeOf(list: WaitingList): ExitCode {
  if (count(list, 'refused') > 0) return 2;
  return count(list, 'failed') + left(list) > 0 ? 1 : 0;
}

/**
 * Keeps a drawing, or a text that says why there is none, beside every spec in a folder.
 * @param stop ends it once the spec in hand is done
 * @returns 1 when the folder is gone; with `once` 2 when a spec was refused
 */
export async function watchFolder(
  folder: string,
  options: WatchOptions,
  terminal: WatchTerminal,
  stop: AbortSignal,
): Promise<ExitCode> {
  const place = resolve(folder);
  try {
    const list = await work(place, options, terminal, stop);
    if (!options.once || stop.aborted) {
      terminal.show(stopped(list));
      return options.once ? 1 : 0;
    }
    terminal.show(summary(list));
    return codeOf(list);
  } catch (error) {
    if (!(error instanceof CommandFailed)) throw error;
    terminal.report(`${error.message}\n`);
    return 1;
  }
}
