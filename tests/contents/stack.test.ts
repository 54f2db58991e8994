import fc from 'fast-check';
import { expect, test } from 'vitest';
import { setsThatFit, setThickness, spineFor } from '../../shared/contents/stack.ts';

const caliper = fc.integer({ min: 50_000, max: 500_000 });
const binding = fc.record({
  layers: fc.integer({ min: 2, max: 12 }),
  caliper,
  ease: fc.integer({ min: 0, max: 3_000_000 }),
});
const set = fc.integer({ min: 200_000, max: 8_000_000 });

test('the spine for a stack holds it, and one nanometre less does not', () => {
  fc.assert(
    fc.property(binding, set, fc.integer({ min: 1, max: 60 }), (folder, thickness, count) => {
      const spine = spineFor(count * thickness, folder);
      expect(setsThatFit(spine, thickness, folder)).toBe(count);
      expect(setsThatFit(spine - 1, thickness, folder)).toBe(count - 1);
    }),
  );
});

test('each paper that is added makes a set thicker, and a measured thickness overrules them all', () => {
  fc.assert(
    fc.property(caliper, caliper, caliper, (one, two, three) => {
      const plain = setThickness({ item: { caliper: one } });
      const matted = setThickness({ item: { caliper: one, mats: [two] } });
      const enveloped = setThickness({ item: { caliper: one, mats: [two] }, envelope: { caliper: three } });
      expect(plain).toBeLessThan(matted);
      expect(matted).toBeLessThan(enveloped);
      expect(setThickness({ item: { caliper: one }, thickness: two })).toBe(two);
    }),
  );
});

test('an index card is flat unless a spec says that it is folded, and other cards are folded', () => {
  const thick = (size: string, form?: 'folded' | 'flat') => setThickness({ item: { size, form } });
  expect(thick('us-3x5')).toBe(thick('us-a2', 'flat'));
  expect(thick('us-3x5', 'folded')).toBe(thick('us-a2'));
  expect(thick('us-a2')).toBe(2 * thick('us-3x5'));
});
