import { inOneLine } from './file-names.ts';
import type { SpecGroup } from './look.ts';
import type { Outcome } from './spec-outcome.ts';
import { count, left, type Waiting, type WaitingList } from './waiting.ts';

export interface WatchTerminal {
  /** Takes what was made. */
  readonly show: (text: string) => void;
  /** Takes what was refused or failed. */
  readonly report: (text: string) => void;
}

export const banner = (folder: string): string =>
  `Watching ${folder}: each .json, .yaml or .yml file gets its drawing beside it. Stop with Ctrl+C.\n`;

const namesOf = ({ files }: SpecGroup) => files.map(({ name }) => inOneLine(name)).join(', ');

/** Tells an outcome in one line; the same words are not told again while the specs stay the same. */
export function tell({ show, report }: WatchTerminal, { group, last }: Waiting, outcome: Outcome): void {
  if (!('line' in outcome) || (last && 'line' in last && last.line === outcome.line)) return;
  const say = outcome.is === 'drawn' ? show : report;
  say(`${namesOf(group)}: ${inOneLine(outcome.line)}\n`);
}

/** What a run that leaves has done. */
export function summary(list: WaitingList): string {
  if (list.size === 0) return 'There is no spec here.\n';
  const parts = [
    [count(list, 'drawn'), 'drawn'],
    [count(list, 'current'), 'drawn before'],
    [count(list, 'refused'), 'refused'],
    [count(list, 'failed'), 'failed'],
    [left(list), 'still being written'],
  ] as const;
  return `${parts
    .filter(([number]) => number > 0)
    .map(([number, words]) => `${number} ${words}`)
    .join(', ')}.\n`;
}

export function stopped(list: WaitingList): string {
  const number = left(list);
  return number === 0 ? 'Stopped.\n' : `Stopped; ${number} left for the next start.\n`;
}
