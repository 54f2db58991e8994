import { expect, test } from 'vitest';
import { highsSolver } from '../../src/nesting/highs-solver.ts';
import { compareKit } from '../bench/nesting-kits.ts';
import { kitNumber } from '../support/kits.ts';

const solve = await highsSolver();

// all 200, with more evaluations: node tests/bench/nesting.ts
test.each(Array.from({ length: 20 }, (_, number) => number))(
  'kit %i takes no more sheets than by maxrects-packer, and no longer strip than by potpack',
  (number) => {
    const { sheets, byMaxRects, height, byPotpack } = compareKit(kitNumber(number), solve, {
      evaluations: 200,
      packings: 150,
    });
    expect(sheets).toBeLessThanOrEqual(byMaxRects);
    expect(height).toBeLessThanOrEqual(byPotpack);
  },
);
