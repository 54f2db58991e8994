import fc from 'fast-check';
import { atLeast, atMost, type Bound } from '../../shared/solver/bounds.ts';

const factor = fc.constantFrom(-2, -1, 0, 1, 2);

/** Names of the unknowns in {@link boundSystems}. */
export const unknownNames = ['p', 'q', 'r', 's'] as const;

/** Random small systems of bounds over four unknowns, feasible and infeasible alike. */
export const boundSystems: fc.Arbitrary<readonly Bound[]> = fc
  .array(
    fc.record({
      terms: fc.record({ p: factor, q: factor, r: factor, s: factor }),
      limit: fc.integer({ min: -60, max: 60 }),
      least: fc.boolean(),
    }),
    { minLength: 1, maxLength: 9 },
  )
  .map((rows) =>
    rows.map(({ terms, limit, least }, index) =>
      (least ? atLeast : atMost)(`bound ${index}`, 'form', terms, limit * 1_000_000, `reason ${index}`),
    ),
  );
