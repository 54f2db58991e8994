import { describe, expect, test } from 'vitest';
import { locksOf } from '../../shared/creases/fold-program.ts';
import { guideOf } from '../../shared/guide/guide-of.ts';
import { planReply } from '../../shared/plan-reply/plan-reply.ts';
import { showPlan } from '../../shared/plan-reply/show-plan.ts';
import { nearest } from '../../shared/solver/refusal.ts';
import { remediesFor } from '../../shared/solver/remedies.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { foldOrRefuse } from '../../src/folders/fold-or-refuse.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { everyGroup, type ReadSvg, readSvg } from '../support/read-svg.ts';
import { solved } from '../support/solved.ts';

/*
 * What the slots of a locked pocket folder mean for all that is made of it. Its front cover is 119.6 mm wide; the slot beside
 * the outer edge lies 6 mm within it, and from 21.5 to 57.5 mm above the bottom fold.
 */
const folder = {
  style: 'pocket-folder',
  join: 'slots',
  units: 'mm',
  stock: { width: 700, height: 700, caliper: 0.3, foldFactor: 0 },
  grid: 'none',
  prefer: 'least-paper',
  contents: { item: { width: 100, height: 150 }, perPocket: 2, thickness: 2, turned: false },
};

const draw = (more: object = {}): ReadSvg => readSvg(svgOfFolder(folderSpec.parse({ ...folder, ...more })));
const boxesOf = (read: ReadSvg, id: string) =>
  (everyGroup(read.groups).find((group) => group.id === id)?.paths ?? []).map(({ subpaths }) => {
    const points = subpaths.flatMap(({ pieces }) => pieces.flat());
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
  });

const circle = (offset: object, diameter = 12) => ({
  kind: 'figure',
  on: { place: 'front cover', anchor: 'bottom right', offset },
  figure: { shape: 'circle', diameter },
});
const findings = (knockouts: readonly object[]) =>
  (foldOrRefuse(solved.spec({ ...folder, knockouts })).knockouts?.findings ?? []).map(
    ({ code, does }) => `${code}: ${does}`,
  );

describe('slots are cut', () => {
  test('with the knockouts, where nothing else is cut out and where something is', () => {
    const slots = boxesOf(draw(), 'knockout');
    expect(slots).toHaveLength(4);
    const [across, along] = [1, 36].map((value) => expect.closeTo(value, 3));
    for (const slot of slots) expect(slot).toEqual({ width: across, height: along });
    const both = boxesOf(draw({ knockouts: [circle({ up: 110, left: 50 })] }), 'knockout');
    expect(both).toHaveLength(5);
    expect(both).toContainEqual({ width: expect.closeTo(12, 1), height: expect.closeTo(12, 1) });
  });

  test('narrower by what the tool takes away', () => {
    const cutter = { width: 700, height: 700, kerf: 0.2 };
    for (const slot of boxesOf(draw({ cutter }), 'knockout')) {
      expect(slot.width).toBeCloseTo(0.8, 2);
      expect(slot.height).toBeCloseTo(35.8, 2);
    }
  });
});

describe.each([0.5, 0.9, 1, 1.2, 2])('with a kerf of %d mm', (kerf) => {
  const cutter = { width: 700, height: 700, kerf };

  test('every slot is drawn, with 0.5 mm between its cuts or more', () => {
    const slots = boxesOf(draw({ cutter }), 'knockout');
    expect(slots).toHaveLength(4);
    for (const { width, height } of slots) {
      expect(width).toBeGreaterThanOrEqual(0.499);
      expect(height).toBeCloseTo(36 - kerf, 2);
    }
  });

  test.each([
    ['pocket-folder', 2],
    ['gate-wallet', 4],
    ['tuck-box', 20],
    ['belly-band', 8],
  ])('tongues of a %s are as long as slots so wide need them', (style, perPocket) => {
    const stock = { ...folder.stock, caliper: 0.1 };
    const spec = { ...folder, style, stock, cutter, contents: { item: { size: 'iso-a6' }, perPocket } };
    const { program, proof } = foldOrRefuse(solved.spec(spec));
    expect(proof.holds).toBe(true);
    expect(boxesOf(draw(spec), 'knockout')).toHaveLength(locksOf(program).length);
  });
});

describe('a knockout', () => {
  test('away from every lock is let pass', () => {
    expect(findings([circle({ up: 110, left: 50 })])).toEqual([]);
  });

  test('that leaves too little paper beside a slot is refused', () => {
    // above the slot's end at 57.5 mm, beside the shoulder of its tongue
    expect(findings([circle({ up: 61, left: 0.5 })])).toEqual(expect.arrayContaining(['near-slot: refuse']));
    expect(findings([circle({ up: 61, left: 0.5 })])).not.toContain('lock-cut: refuse');
    expect(findings([circle({ up: 70, left: 0.5 })])).not.toContain('near-slot: refuse');
  });

  test('that takes a whole slot is refused', () => {
    expect(findings([circle({ up: 10, left: 1 }, 60)])).toContain('near-slot: refuse');
  });

  test('that all but cuts a tongue off its tab is refused', () => {
    // in the tab only, which is 6.5 mm deep beside the neck; the neck’s middle is that of the pocket
    const tab = 'left front pocket tab';
    const inTab = (up: number) => ({
      ...circle({}, 3),
      on: { place: 'front pocket', anchor: 'left', offset: { up, right: 3.25 } },
      through: { from: tab, to: tab },
    });
    const told = findings([inTab(0)]);
    expect(told).toContain('near-tongue: refuse');
    expect(told).not.toContain('near-slot: refuse');
    expect(told).not.toContain('lock-cut: refuse');
    // half of the neck is 17.7 mm
    expect(findings([inTab(24)])).toContain('near-tongue: refuse');
    expect(findings([inTab(28)])).not.toContain('near-tongue: refuse');
  });

  test('through a tongue is refused', () => {
    const through = { ...circle({ up: 36, left: 8 }, 4), through: 'every-layer' };
    expect(findings([through])).toContain('lock-cut: refuse');
  });
});

test('its plan tells the locks, and its maker’s sheet glues nothing', () => {
  const folded = foldOrRefuse(solved.spec(folder));
  const plan = planReply.parse(showPlan(folded, { alternatives: [], fittings: undefined }));
  expect(plan.locks).toHaveLength(4);
  expect(plan.glue).toEqual([]);
  expect(plan.tapeLength.mm).toBe(0);
  expect(plan.knockouts).toBeUndefined();
  for (const machine of ['yes', 'no'] as const) {
    const sheet = JSON.stringify(guideOf(folded, { machine, print: 'standard', shows: 'outside' }));
    expect(sheet).toContain('Push the tongues of the pocket tabs through their slots');
    expect(sheet).toContain('Where the slots are cut');
    expect(sheet).not.toMatch(/Tape or glue|glue at|Where the glue goes/u);
  }
});

test('what has no room for its tongues is refused with the reason, and told that glue would do', () => {
  const refusal = (more: object) => {
    const solution = solveFolder(folderSpec.parse({ ...folder, ...more }));
    if (solution.ok) throw new Error('it folds');
    return JSON.stringify(solution.misfits);
  };
  const tight = folderSpec.parse({
    ...folder,
    stock: { ...folder.stock, width: 275, height: 300, turned: false },
  });
  const solution = solveFolder(tight);
  if (solution.ok) throw new Error('it folds');
  const remedies = remediesFor(tight, nearest(solution.misfits)).map(({ message }) => message);
  expect(remedies).toContain('hold the tabs with tape or glue');
  expect(refusal({ dimensions: { tab: 12 } })).toContain('the tongue reaches beyond it');
  expect(refusal({ dimensions: { pocket: 20 } })).toContain('no room for its tongues');
  expect(refusal({ dimensions: { panel: { width: 110 }, spine: 10 } })).toContain(
    'the tab at the spine lies below half of it',
  );
});
