import { describe, expect, test } from 'vitest';
import { baseOf, baseOfProblem, inOneLine } from '../../../src/cli/watch/file-names.ts';
import type { Look, SpecGroup } from '../../../src/cli/watch/look.ts';
import type { Outcome } from '../../../src/cli/watch/spec-outcome.ts';
import {
  afterLook,
  afterOutcome,
  dueNow,
  goneSince,
  isRipe,
  nextDueMs,
  type WaitingList,
} from '../../../src/cli/watch/waiting.ts';

const group = (base: string, print: string): SpecGroup => ({ base, files: [], print });
const look = (...groups: readonly SpecGroup[]): Look => ({
  groups: new Map(groups.map((each) => [each.base, each])),
  problems: [],
});
const none: WaitingList = new Map();
const due = (list: WaitingList, nowMs: number) => dueNow(list, nowMs).map((each) => each.group.base);

function having(list: WaitingList, base: string, outcome: Outcome, nowMs: number): WaitingList {
  const waiting = list.get(base);
  if (!waiting) throw new Error(base);
  return new Map(list).set(base, afterOutcome(waiting, outcome, nowMs, 'print'));
}

describe('a spec that waits', () => {
  const dropped = afterLook(none, look(group('card', '1')), 1_000);

  test('is due once it has been unchanged for half a second', () => {
    expect(due(dropped, 1_499)).toEqual([]);
    expect(due(afterLook(dropped, look(group('card', '1')), 1_400), 1_500)).toEqual(['card']);
    expect(nextDueMs(dropped)).toBe(1_500);
  });

  test('waits anew after each change', () => {
    const grown = afterLook(dropped, look(group('card', '2')), 1_400);
    expect(due(grown, 1_899)).toEqual([]);
    expect(due(grown, 1_900)).toEqual(['card']);
  });

  test('is refused only after two seconds without a change', () => {
    const [first] = dueNow(dropped, 1_500);
    expect(first && isRipe(first, 1_500)).toBe(false);
    const later = having(dropped, 'card', { is: 'unripe' }, 1_500);
    expect(due(later, 2_999)).toEqual([]);
    const [second] = dueNow(later, 3_000);
    expect(second && isRipe(second, 3_000)).toBe(true);
  });

  test('that was unchanged for long when hemfold started is due at once', () => {
    expect(
      due(
        afterLook(none, look(group('card', '1')), 1_000, () => 5_000),
        1_000,
      ),
    ).toEqual(['card']);
  });

  test('is done once', () => {
    const done = having(dropped, 'card', { is: 'drawn', line: '' }, 1_600);
    expect(nextDueMs(afterLook(done, look(group('card', '1')), 9_000_000))).toBeUndefined();
    expect(due(afterLook(done, look(group('card', '2')), 2_000), 2_500)).toEqual(['card']);
  });

  test('is tried again after a failure that is not its own', () => {
    const failed = having(dropped, 'card', { is: 'failed', line: '', retry: 'later' }, 1_600);
    expect(due(failed, 11_599)).toEqual([]);
    expect(due(failed, 11_600)).toEqual(['card']);
  });

  test('and goes is forgotten', () => {
    expect(goneSince(dropped, look())).toEqual(['card']);
    expect(afterLook(dropped, look(), 2_000).size).toBe(0);
  });
});

describe('file names', () => {
  test.each(['card.json', 'Card.JSON', 'a b.yaml', 'x.y.yml', 'ä.json'])('%s is a spec', (name) => {
    expect(baseOf(name)).toBe(name.replace(/\.[^.]+$/, ''));
  });

  test.each([
    '.json',
    '.card.json',
    '.#card.json',
    '#card.json#',
    '~$card.json',
    'card.json~',
    'card.json.swp',
    '.card.json.swp',
    'card.json.tmp',
    'card.jsonl',
    'json',
    'card.svg',
    'card.problem.txt',
    '4913',
  ])('%s is none', (name) => {
    expect(baseOf(name)).toBeUndefined();
  });

  test('a problem text has the name of its spec', () => {
    expect(baseOfProblem('a.b.problem.txt')).toBe('a.b');
    expect(baseOfProblem('notes.txt')).toBeUndefined();
  });

  test('a name cannot write over the terminal', () => {
    expect(inOneLine('a\u001b[2Jb\nc\u202ed')).toBe('a\ufffd[2Jb\ufffdc\ufffdd');
    expect(inOneLine('Größe 👩‍🎨.json')).toBe('Größe 👩‍🎨.json');
  });
});
