import { describe, expect, test } from 'vitest';
import { proofOf } from '../../shared/folding/proof-of.ts';
import { inch, mm } from '../../shared/lengths/nanometres.ts';
import { showPlan } from '../../shared/plan-reply/show-plan.ts';
import { sizesOfKind } from '../../shared/sizes/catalogue.ts';
import { alternativesTo } from '../../shared/solver/alternatives.ts';
import { nearest, shortagesOf } from '../../shared/solver/refusal.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { solved } from '../support/solved.ts';

/*
 * Folders that makers fold from memorised score positions. Common practice, no published source; every number
 * is exact.
 */

const scoresOf = (raw: object) => {
  const { scores } = showPlan(proofOf(solved(raw)), { alternatives: [], fittings: undefined });
  return {
    vertical: scores.vertical.map(({ inch }) => inch),
    horizontal: scores.horizontal.map(({ inch }) => inch),
  };
};

describe('a folder from a 12 x 12 in sheet', () => {
  const raw = {
    style: 'twin-sleeve',
    stock: { width: '12 in', height: '12 in' },
    dimensions: {
      panel: { width: '4 in', height: '5 3/4 in' },
      spine: '1/2 in',
      overlap: '1/2 in',
      topFlap: '2 1/2 in',
    },
  };

  test('is scored where makers score it', () => {
    expect(scoresOf(raw)).toEqual({
      vertical: ['1 3/4', '5 3/4', '6 1/4', '10 1/4'],
      horizontal: ['2 1/2', '8 1/4'],
    });
  });

  test('has a hem of 1 3/4 in and a bottom flap of 3 3/4 in, and uses the whole sheet', () => {
    const plan = solved(raw);
    expect(plan.dimensions.hem).toBe(inch(1.75));
    expect(plan.dimensions.bottomFlap).toBe(inch(3.75));
    expect(plan.wholeSheet).toBe(true);
  });
});

test('a folder from a 9 1/2 x 11 in sheet is scored where makers score it', () => {
  const raw = {
    style: 'twin-sleeve',
    stock: { width: '9 1/2 in', height: '11 in' },
    dimensions: {
      panel: { width: '3 1/4 in', height: '5 1/4 in' },
      spine: '1/2 in',
      overlap: '1/2 in',
      topFlap: '2 1/4 in',
    },
  };
  expect(scoresOf(raw)).toEqual({
    vertical: ['1 1/4', '4 1/2', '5', '8 1/4'],
    horizontal: ['2 1/4', '7 1/2'],
  });
  const turned = { ...raw, stock: { width: '11 in', height: '9 1/2 in' } };
  expect(scoresOf(turned)).toEqual(scoresOf(raw));
  expect(solved(turned).arrangement.sheetTurned).toBe(true);
});

describe('contents alone', () => {
  const card = { width: '5 in', height: '3 1/2 in', raised: '1/32 in' };
  const envelope = { width: '5 1/8 in', height: '3 5/8 in' };
  const raw = {
    style: 'twin-sleeve',
    grid: '1/8 in',
    stock: { width: '12 in', height: '12 in' },
    contents: { item: card, envelope, perPocket: 2 },
  };

  test('two raised cards per pocket give the 12 x 12 in sheet’s folder: panels 5 3/4 in high', () => {
    const plan = solved(raw);
    expect(plan.dimensions['panel.height']).toBe(inch(5.75));
    expect(plan.wholeSheet).toBe(true);
    expect(plan.dimensions['panel.width']).toBeGreaterThanOrEqual(inch(3.625));
    expect(Object.values(plan.dimensions).filter((length) => length % inch(1 / 8) !== 0)).toEqual([]);
  });

  test.each([
    ['two raised cards', { ...card }, 2],
    ['three flat ones', { width: card.width, height: card.height }, 3],
  ])('a 1/2 in spine holds %s with envelopes per pocket', (_, item, perPocket) => {
    const plan = solved({ ...raw, contents: { item, envelope }, dimensions: { spine: '1/2 in' } });
    expect(plan.load?.perPocket).toBe(perPocket);
  });
});

describe('ISO A6 cards in C6 envelopes (ISO 216, ISO 269)', () => {
  const raw = {
    style: 'twin-sleeve',
    contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' } },
  };

  test('get the smallest listed sheet of their own system that takes them', () => {
    const { sheet } = solved(raw).arrangement;
    const area = (size: { width: number; height: number }) => size.width * size.height;
    const smaller = sizesOfKind('sheet').filter((size) => area(size) < area(sheet));
    // B sizes are seldom sold as craft paper and come last
    const others = smaller.filter(({ id, measure }) => measure === 'metric' && !id.startsWith('iso-b'));
    expect(others.length).toBeGreaterThan(3);
    /*
     * By hand, in mm: the envelope is 114 x 162 and one set 2 * 0.33 + 4 * 0.12 = 1.14, times 1.15 for packing
     * = 1.311. Across 6 mm of play, along 3 mm and the set; spine 2 * 1.311 + 5 * 0.3 + 1 = 5.122; hem and
     * seam at least 6.35 + 3 = 9.35. So the blank is at least
     *   upright: 2 * 120 + 5.122 + 2 * 9.35 = 263.822 wide, 2 * 166.311 + 9.35 = 341.972 high;
     *   turned:  2 * 168 + 5.122 + 2 * 9.35 = 359.822 wide, 2 * 118.311 + 9.35 = 245.972 high.
     */
    const blanks = [
      [263.822, 341.972],
      [359.822, 245.972],
    ] as const;
    const takes = ({ width, height }: { width: number; height: number }) =>
      blanks.some(
        ([across, down]) =>
          (across * 1e6 <= width && down * 1e6 <= height) || (across * 1e6 <= height && down * 1e6 <= width),
      );
    expect(others.filter(takes).map(({ id }) => id)).toEqual([]);
    expect(takes(sheet)).toBe(true);
  });

  test('are told of the smaller sheet that the other system has', () => {
    const sheets = alternativesTo(solved(raw)).map(({ plan }) => plan.arrangement.sheet.size);
    expect(sheets).toContain('us-ledger');
  });

  test('do not fit a 12 x 12 in sheet, and the refusal says by how much', () => {
    const solution = solveFolder(solved.spec({ ...raw, stock: { size: 'craft-12x12' } }));
    if (solution.ok) throw new Error('a folder was found that cannot be');
    const [shortage, ...others] = shortagesOf(nearest(solution.misfits), 'metric');
    expect(others).toEqual([]);
    expect(shortage).toMatchObject({ bound: 'sheet height', path: '/stock', shortfall: mm(341.972 - 304.8) });
  });
});
