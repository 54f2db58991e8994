import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { proofOf } from '../../shared/folding/proof-of.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { plainMarks } from '../../shared/views/move-marks.ts';
import { type ViewName, wholeViews } from '../../shared/views/view-name.ts';
import { pictureOf } from '../../shared/views/views.ts';
import { specs } from '../support/specs.ts';
import { spell } from '../support/spelling.ts';
import { collidingGroups, collidingTexts, extentOf, outsideOf, spoilt } from './extents.ts';
import { exampleNames, folded, shown } from './shown.ts';

describe.each(exampleNames)('%s', (name) => {
  const expectTidy = (view: ViewName) => {
    const picture = shown(name, view);
    expect(outsideOf(picture)).toEqual([]);
    expect(collidingGroups(picture)).toEqual([]);
    expect(collidingTexts(picture)).toEqual([]);
  };

  test.each(wholeViews)('%s lies on its page, and nothing on anything else', expectTidy);

  test('so does each step', () => {
    const { steps } = folded(name).program;
    for (const index of steps.keys()) expectTidy(`step-${index + 1}`);
  });

  test('all text can be read: 3 mm at least', () => {
    for (const view of wholeViews) {
      const sizes = plainMarks(shown(name, view).marks).flatMap((mark) =>
        mark.kind === 'text' ? [mark.size] : [],
      );
      expect(sizes.length).toBeGreaterThan(3);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(3);
    }
  });
});

test('the checks notice a mark off the page, texts and groups on each other', () => {
  const picture = shown('hems-out', 'inside');
  expect(outsideOf(spoilt(picture)).length).toBeGreaterThan(0);
  const [first] = picture.marks.filter((mark) => mark.kind === 'group');
  const doubled = { ...picture, marks: [...picture.marks, ...(first ? [first] : [])] };
  expect(collidingTexts(doubled)).toContain('"top flap" and "top flap"');
  expect(collidingGroups(doubled)).toContain('inside and inside');
});

test('any folder that can be made has pictures that lie on their pages', () => {
  fc.assert(
    fc.property(specs, fc.constantFrom(...wholeViews), ({ spec, spelling }, view) => {
      const understood = folderSpec.safeParse(spell(spec, spelling));
      fc.pre(understood.success);
      const solution = solveFolder(understood.data);
      fc.pre(solution.ok);
      const picture = solution.ok ? pictureOf(proofOf(solution.plan), view) : undefined;
      if (!picture) throw new Error('there is no picture');
      expect(outsideOf(picture)).toEqual([]);
      expect(collidingGroups(picture)).toEqual([]);
    }),
    { numRuns: 60, seed: 5 },
  );
});

test('the first rows of text stand at the top left, and the legend below everything', () => {
  const { marks } = shown('hems-out', 'all');
  const [title, ...rest] = marks.map(extentOf);
  const legend = rest.at(-1);
  expect(title?.left).toBe(10);
  for (const extent of rest.slice(0, -1)) {
    expect(extent.top).toBeGreaterThan(title?.top ?? 0);
    expect(extent.bottom).toBeLessThanOrEqual(legend?.top ?? 0);
  }
});
