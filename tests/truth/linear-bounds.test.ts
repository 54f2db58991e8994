import fc from 'fast-check';
import { expect, test } from 'vitest';
import { solve } from 'yalps';
import type { Bound } from '../../shared/solver/bounds.ts';
import { eliminate, sharesOf } from '../../shared/solver/eliminate.ts';
import { boundSystems, unknownNames } from '../support/bounds.ts';

/* The second opinion is yalps, a simplex solver by another author; unknowns are split, since it wants them >= 0. */

function feasibleBySimplex(bounds: readonly Bound[]): boolean {
  const halves = unknownNames.flatMap((name) => [
    [`${name}+`, name, 1],
    [`${name}-`, name, -1],
  ]) as [string, string, number][];
  const { status } = solve({
    direction: 'minimize',
    objective: 'cost',
    constraints: new Map(bounds.map(({ name, limit }) => [name, { max: limit / 1e6 }])),
    variables: new Map(
      halves.map(([half, name, sign]) => [
        half,
        new Map([
          ['cost', 0],
          ...bounds.map((bound): [string, number] => [bound.name, sign * (bound.terms[name] ?? 0)]),
        ]),
      ]),
    ),
  });
  return status === 'optimal';
}

test('elimination and simplex agree on what can be met', () => {
  let [met, unmet] = [0, 0];
  fc.assert(
    fc.property(boundSystems, (bounds) => {
      const feasible = eliminate(bounds, unknownNames).contradictions.length === 0;
      feasible ? met++ : unmet++;
      expect(feasible).toBe(feasibleBySimplex(bounds));
    }),
    { numRuns: 2000, seed: 20 },
  );
  expect(Math.min(met, unmet)).toBeGreaterThan(200);
});

test('each contradiction is a sum of bounds that leaves no unknown and a negative limit (Farkas)', () => {
  fc.assert(
    fc.property(boundSystems, (bounds) => {
      for (const row of eliminate(bounds, unknownNames).contradictions) {
        const shares = [...sharesOf(row)];
        expect(shares.every(([, share]) => share > 0)).toBe(true);
        for (const name of unknownNames) {
          expect(
            shares.reduce((sum, [bound, share]) => sum + share * (bound.terms[name] ?? 0), 0),
          ).toBeCloseTo(0, 6);
        }
        expect(shares.reduce((sum, [bound, share]) => sum + share * bound.limit, 0)).toBeLessThan(0);
      }
    }),
    { numRuns: 1000, seed: 21 },
  );
});
