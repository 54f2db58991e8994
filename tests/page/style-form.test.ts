import { expect, test } from 'vitest';
import { methods } from '../../src/page/ask/methods.ts';
import { type Spec, withValue } from '../../src/page/spec/pointer.ts';

const { styles, sizes } = methods.catalogue();

/** Specs of a style of which at least one can be folded. */
const asked = (style: string): readonly Spec[] => [
  { style, units: 'mm', contents: { item: { size: 'iso-a6' }, perPocket: 3 } },
  { style, units: 'mm', dimensions: { width: '60 mm', height: '110 mm' } },
];

test('every size has its measures and the names of its kinds', () => {
  expect(sizes.length).toBeGreaterThan(50);
  for (const { value, kinds, width, height } of sizes) {
    expect(kinds.length, value).toBeGreaterThan(0);
    expect([width, height].join(), value).toMatch(/^[\d ./]+ (?:mm|in),[\d ./]+ (?:mm|in)$/u);
  }
});

test.each(styles)(
  'what is usual of a $name is what the core does when nothing is said',
  ({ name, choices }) => {
    for (const { path, usual, options } of choices) {
      expect(options).toContain(usual);
      for (const spec of asked(name)) {
        expect(methods.fold(withValue(spec, path, usual)), path).toEqual(methods.fold(spec));
      }
    }
  },
);

test.each(styles)('every length of a $name can be set', ({ name, lengths }) => {
  for (const { path } of lengths) {
    const answer = methods.fold(withValue({ style: name, units: 'mm' }, path, '20 mm'));
    const unknown = answer.state === 'unreadable' ? answer.faults.filter((fault) => fault.path === path) : [];
    expect(unknown, path).toEqual([]);
  }
});
