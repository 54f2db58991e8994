import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atLeast, atMost, exactly, type Unknown } from '../../shared/solver/bounds.ts';
import { settle } from '../../shared/solver/settle.ts';
import { snap } from '../../shared/solver/snap.ts';
import { boundSystems, unknownNames } from '../support/bounds.ts';

const wishing = (value: number): Unknown[] =>
  unknownNames.map((name) => ({ name, wish: () => ({ value, snap: 'nearest', why: 'the test wishes it' }) }));

test('settled values keep every bound, to the nanometre that rounding to whole ones costs', () => {
  let settledOnes = 0;
  fc.assert(
    fc.property(
      boundSystems,
      fc.integer({ min: -1e8, max: 1e8 }),
      fc.constantFrom(0, 250_000),
      (bounds, wish, grid) => {
        const outcome = settle(wishing(wish), bounds, grid);
        if (!outcome.ok) return;
        settledOnes++;
        for (const { terms, limit } of bounds) {
          const sum = Object.entries(terms).reduce(
            (total, [name, factor]) => total + factor * (outcome.values[name] ?? 0),
            0,
          );
          expect(sum - limit).toBeLessThanOrEqual(8);
        }
      },
    ),
    { numRuns: 2000, seed: 22 },
  );
  expect(settledOnes).toBeGreaterThan(200);
});

describe('a settled value says what decided it', () => {
  const one: Unknown[] = [{ name: 'p', wish: () => ({ value: 50, snap: 'nearest', why: 'wished' }) }];
  test.each([
    ['the wish', [atMost('a', 'form', { p: 1 }, 90, 'too long')], 50, 'wish', 'wished'],
    ['an upper bound', [atMost('a', 'form', { p: 1 }, 40, 'too long')], 40, 'bound', 'too long'],
    ['a lower bound', [atLeast('a', 'form', { p: 1 }, 60, 'too short')], 60, 'bound', 'too short'],
    ['the spec', exactly('length', { p: 1 }, 70, '/p'), 70, 'given', 'the spec gives the length'],
  ] as const)('%s', (_, bounds, value, decidedBy, why) => {
    const outcome = settle(one, bounds, 0);
    expect(outcome).toMatchObject({ ok: true, settled: [{ value, decidedBy, why }] });
  });
});

test.each([
  ['nearest', 'nearest', 7, [0, 20], 5, 5],
  ['up', 'up', 6, [0, 20], 5, 10],
  ['down', 'down', 9, [0, 20], 5, 5],
  ['down, but the range begins above', 'down', 9, [8, 20], 5, 10],
  ['no grid step in the range: the wish itself', 'nearest', 7, [6, 8], 5, 7],
  ['no grid', 'up', 7, [0, 20], 0, 7],
] as const)('snapping %s', (_, how, wish, [least, most], grid, expected) => {
  expect(snap({ value: wish, snap: how, why: '' }, { least, most }, grid).value).toBe(expected);
});
