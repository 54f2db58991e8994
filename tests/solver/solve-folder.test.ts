import fc from 'fast-check';
import { applyPatch } from 'rfc6902';
import { describe, expect, test } from 'vitest';
import { proofOf } from '../../shared/folding/proof-of.ts';
import { inch, mm } from '../../shared/lengths/nanometres.ts';
import { showRemedy } from '../../shared/plan-reply/show-plan.ts';
import { warningsOf } from '../../shared/plan-reply/warnings.ts';
import { alternativesTo } from '../../shared/solver/alternatives.ts';
import { slackOf } from '../../shared/solver/bounds.ts';
import { fittingsOf } from '../../shared/solver/fits.ts';
import { possibleFrom } from '../../shared/solver/possible.ts';
import { nearest, shortagesOf } from '../../shared/solver/refusal.ts';
import { remediesFor } from '../../shared/solver/remedies.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { folderSpec, sheetQuestion } from '../../shared/spec/folder-spec.ts';
import { solved } from '../support/solved.ts';

const length = (least: number, most: number) =>
  fc.integer({ min: least * 4, max: most * 4 }).map((n) => `${n / 4} mm`);
const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

const sheets = fc.record({
  width: length(150, 500),
  height: length(150, 500),
  caliper: fc.constantFrom('0.2 mm', '0.3 mm'),
  oneWay: fc.boolean(),
});

/** Specs of all kinds, many of which cannot be folded. */
const specs = fc
  .record({
    style: fc.constant('twin-sleeve'),
    stock: optional(fc.oneof(sheets, fc.array(sheets, { minLength: 1, maxLength: 3 }))),
    contents: optional(
      fc.record({
        item: fc.record({ width: length(60, 150), height: length(60, 150) }),
        perPocket: optional(fc.integer({ min: 1, max: 8 })),
      }),
    ),
    dimensions: optional(
      fc.record({
        panel: optional(fc.record({ width: optional(length(70, 160)), height: optional(length(70, 200)) })),
        spine: optional(length(4, 30)),
        hem: optional(length(10, 60)),
        topFlap: optional(length(30, 100)),
        bottomFlap: optional(length(30, 150)),
        overlap: optional(length(10, 40)),
      }),
    ),
    grid: fc.constantFrom('none', '1 mm', '1/8 in'),
    prefer: fc.constantFrom('whole-sheet', 'least-paper'),
  })
  .map((raw) => JSON.parse(JSON.stringify(raw)) as object)
  .filter((raw) => folderSpec.safeParse(raw).success);

test('a plan keeps every bound, and every dimension that the spec gives, exactly', () => {
  let plans = 0;
  fc.assert(
    fc.property(specs, (raw) => {
      const spec = solved.spec(raw);
      const solution = solveFolder(spec);
      if (!solution.ok) return;
      plans++;
      const { plan } = solution;
      for (const bound of plan.bounds) expect(slackOf(bound, plan.dimensions)).toBeGreaterThanOrEqual(0);
      const { panel, ...others } = spec.dimensions ?? {};
      const given = { 'panel.width': panel?.width, 'panel.height': panel?.height, ...others };
      for (const [name, value] of Object.entries(given)) {
        if (value !== undefined) expect(plan.dimensions[name], name).toBe(value);
      }
    }),
    { numRuns: 1500, seed: 30 },
  );
  expect(plans).toBeGreaterThan(200);
});

test('what the solver chooses lies on the grid, or a warning says why not', () => {
  fc.assert(
    fc.property(specs, (raw) => {
      const solution = solveFolder(solved.spec(raw));
      if (!solution.ok || solution.plan.grid === 0) return;
      const { plan } = solution;
      // no score lies at the seam, so the overlap takes what is left to the last fraction
      const off = plan.settled.filter(
        ({ name, value, decidedBy, why }) =>
          decidedBy !== 'given' &&
          value % plan.grid !== 0 &&
          !(name === 'overlap' && why === 'the seam takes the height that is left'),
      );
      expect(warningsOf(proofOf(plan)).filter(({ code }) => code === 'off-grid')).toHaveLength(off.length);
    }),
    { numRuns: 800, seed: 31 },
  );
});

test('remedies and alternatives are true: applied to what was sent (RFC 6902), they give what they say', () => {
  let tried = 0;
  fc.assert(
    fc.property(specs, (raw) => {
      const spec = solved.spec(raw);
      const solution = solveFolder(spec);
      const offers = solution.ok
        ? alternativesTo(solution.plan)
        : remediesFor(spec, nearest(solution.misfits));
      for (const offer of offers) {
        tried++;
        const shown = showRemedy(offer);
        const changed = structuredClone(raw);
        expect(applyPatch(changed, structuredClone(shown.changes) as never), shown.message).toEqual(
          shown.changes.map(() => null),
        );
        const again = solveFolder(solved.spec(changed));
        expect(again.ok, `${shown.message}: ${JSON.stringify(changed)}`).toBe(true);
        if (again.ok) expect(again.plan.dimensions, JSON.stringify(changed)).toEqual(offer.plan.dimensions);
      }
    }),
    { numRuns: 500, seed: 32 },
  );
  expect(tried).toBeGreaterThan(300);
});

test('a shortfall is the least that helps: the sheet grown by it folds, grown by a micrometre less does not', () => {
  let checked = 0;
  fc.assert(
    fc.property(specs, (raw) => {
      const spec = { ...solved.spec(raw), grid: 'none' as const };
      const solution = solveFolder(spec);
      if (solution.ok) return;
      const misfit = nearest(solution.misfits);
      const { arrangement } = misfit;
      const shortages = shortagesOf(misfit, 'metric');
      const [only] = shortages;
      if (shortages.length !== 1 || !only?.bound.startsWith('sheet ')) return;
      checked++;
      const side = (only.bound === 'sheet width') !== arrangement.sheetTurned ? 'width' : 'height';
      const grown = (by: number) => {
        const stock = {
          ...arrangement.sheet,
          caliper: arrangement.sheet.paper.caliper,
          turned: arrangement.sheetTurned,
        };
        const { title: _title, paper: _paper, path: _path, size: _size, ...rest } = stock;
        const contents = spec.contents && { ...spec.contents, turned: arrangement.itemTurned };
        return solveFolder({ ...spec, contents, stock: { ...rest, [side]: rest[side] + by } } as typeof spec)
          .ok;
      };
      expect(grown(only.shortfall)).toBe(true);
      expect(grown(only.shortfall - 1000)).toBe(false);
    }),
    { numRuns: 1500, seed: 33 },
  );
  expect(checked).toBeGreaterThan(50);
});

describe('the same answer by other roads', () => {
  const card = { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' } };

  test('contents by name and contents measured give the same dimensions', () => {
    const measured = {
      item: { width: '105 mm', height: '148 mm' },
      envelope: { width: '11.4 cm', height: '16.2 cm' },
    };
    const stock = { size: 'iso-a3' };
    const [named, bySize] = [card, measured].map((contents) =>
      solved({ style: 'twin-sleeve', contents, stock }),
    );
    expect(named?.dimensions).toEqual(bySize?.dimensions);
  });

  test('a spec in inches and the same in millimetres give the same dimensions', () => {
    const inInches = solved({
      style: 'twin-sleeve',
      units: 'in',
      grid: '1/8',
      stock: { width: 12, height: 12 },
      dimensions: { panel: { width: 4 } },
    });
    const inMm = solved({
      style: 'twin-sleeve',
      units: 'mm',
      grid: 3.175,
      stock: { width: 304.8, height: 304.8 },
      dimensions: { panel: { width: 101.6 } },
    });
    expect(inMm.dimensions).toEqual(inInches.dimensions);
  });

  test('what a folder’s pockets are said to hold can be asked for, and gives no larger a panel', () => {
    const dimensions = { panel: { width: '4 3/4 in', height: '7 in' }, spine: '1/2 in' };
    const fittings = fittingsOf(solved({ style: 'twin-sleeve', dimensions, stock: { size: 'us-ledger' } }));
    expect(fittings.length).toBeGreaterThan(3);
    for (const { item, envelope, perPocket } of fittings) {
      const contents = {
        item: { size: item.id },
        ...(envelope ? { envelope: { size: envelope.id } } : {}),
        perPocket,
      };
      const plan = solved({ style: 'twin-sleeve', dimensions, contents, stock: { size: 'us-ledger' } });
      expect(plan.load?.perPocket).toBe(perPocket);
    }
  });

  test('what a sheet is said to become, it becomes; one more per pocket does not go', () => {
    const question = sheetQuestion.parse({ style: 'twin-sleeve', stock: { size: 'craft-12x12' } });
    const possible = possibleFrom(question);
    expect(possible.length).toBeGreaterThan(3);
    for (const { plan, perPocket } of possible) {
      expect(plan.load?.perPocket).toBe(perPocket);
      const { contents } = plan.spec;
      if (perPocket >= 12 || !contents) continue;
      expect(solveFolder({ ...plan.spec, contents: { ...contents, perPocket: perPocket + 1 } }).ok).toBe(
        false,
      );
    }
  });
});

describe('choices', () => {
  const contents = { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' } };
  const a3 = { size: 'iso-a3' };

  test('a one-way print is never turned', () => {
    const stock = { width: '300 mm', height: '400 mm', oneWay: true };
    expect(solved({ style: 'twin-sleeve', contents, stock }).arrangement.sheetTurned).toBe(false);
    const wide = { width: '400 mm', height: '300 mm' };
    expect(
      solved({ style: 'twin-sleeve', contents, stock: { ...wide, turned: true } }).arrangement.sheetTurned,
    ).toBe(true);
  });

  test('the smallest of several own sheets is used', () => {
    const stock = [{ size: 'iso-a2' }, { ...a3, name: 'Lamp room blue' }];
    expect(solved({ style: 'twin-sleeve', contents, stock }).arrangement.sheet.title).toBe('Lamp room blue');
  });

  test('least paper uses less than the whole sheet', () => {
    const area = (prefer: string) => {
      const { width, height } = solved({ style: 'twin-sleeve', contents, stock: a3, prefer }).blank;
      return width * height;
    };
    expect(area('least-paper')).toBeLessThan(area('whole-sheet'));
  });

  test('the cutter’s area binds, less its margins, whichever way the blank lies', () => {
    const cutter = { width: '300 mm', height: '420 mm', margin: '6 mm' };
    const { blank } = solved({ style: 'twin-sleeve', contents, stock: { size: 'iso-a2' }, cutter });
    const [short, long] = [blank.width, blank.height].toSorted((one, other) => one - other);
    expect(short).toBeLessThanOrEqual(mm(288));
    expect(long).toBeLessThanOrEqual(mm(408));
  });

  test('the default grid is 1/16 in for a spec in inches and 1 mm for any other', () => {
    const grid = (width: string) =>
      solved({ style: 'twin-sleeve', dimensions: { panel: { width } }, stock: a3 }).grid;
    expect(grid('4 in')).toBe(inch(1 / 16));
    expect(grid('100 mm')).toBe(mm(1));
    const named = (size: string) =>
      solved({ style: 'twin-sleeve', contents: { item: { size } }, stock: { size: 'us-ledger' } }).grid;
    expect(named('us-a2')).toBe(inch(1 / 16));
    expect(named('iso-a6')).toBe(mm(1));
  });
});
