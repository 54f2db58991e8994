import { describe, expect, test } from 'vitest';
import { setsThatFit, setThickness, spineFor } from '../../shared/contents/stack.ts';
import { inch, mm } from '../../shared/lengths/nanometres.ts';

/*
 * A worked stack, by hand: six cards of 0.33 mm base, folded, with one mat of 0.20 mm, and six envelopes of four
 * layers of 0.12 mm; packing factor 1.15; folder of 0.30 mm paper, six layers of it, 1 mm of ease. Common
 * practice, no published source; inside = drawn - caliper for a wall between two right-angled folds is the
 * carton engineers' rule.
 *   one set  (2 * 0.33 + 0.20 + 4 * 0.12) * 1.15 = 1.34 * 1.15 = 1.541 mm
 *   stack    6 * 1.541 = 9.246 mm
 *   spine    9.246 + 5 * 0.30 + 1.0 = 11.746 mm
 */
const set = { item: { mats: [mm(0.2)] }, envelope: {} };
const binding = { layers: 6, caliper: mm(0.3), ease: mm(1) };

test('the worked stack', () => {
  expect(setThickness(set)).toBe(mm(1.541));
  expect(spineFor(6 * setThickness(set), binding)).toBe(mm(11.746));
});

test.each([
  [1 / 4, 2],
  [3 / 8, 4],
  [1 / 2, 6],
  [3 / 4, 10],
])('a spine of %f in holds %i such sets', (spine, sets) => {
  expect(setsThatFit(inch(spine), setThickness(set), binding)).toBe(sets);
});

describe('the ends of the formula', () => {
  test('two layers without contents and ease are one caliper apart', () => {
    expect(spineFor(0, { layers: 2, caliper: mm(0.3), ease: 0 })).toBe(mm(0.3));
  });

  test('a spine narrower than the folder itself holds nothing', () => {
    expect(setsThatFit(mm(1), mm(1), binding)).toBe(0);
  });

  test('decoration loses a fifth of its height to the hand that closes the folder', () => {
    const raised = setThickness({ item: { raised: mm(1) } }) - setThickness({ item: {} });
    expect(raised).toBe(mm(0.8));
  });
});
