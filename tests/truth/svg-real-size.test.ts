import { describe, expect, it } from 'vitest';
import { type Drawn, mustDraw, sleeveOf } from '../support/drawn.ts';
import { blankOf } from '../support/expected-lines.ts';
import { rasterOf, type Stroke, strokesInColumn, strokesInRow } from '../support/raster.ts';

/*
 * A renderer that knows nothing of folders turns drawings into pixels, which are measured with the plan's
 * numbers. 1 in = 2.54 cm = 25.4 mm = 96 px = 72 pt (CSS Values and Units 3, "Absolute Lengths"), so at 300
 * pixels to the inch a millimetre is 300 / 25.4 pixels.
 */
const DPI = 300;
const pixels = (millimetres: number, dpi = DPI): number => (millimetres / 25.4) * dpi;

const continuous = { lineType: 'continuous' };
const layers = { score: continuous, cut: continuous };

const museumCards = {
  style: 'twin-sleeve',
  contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 },
  stock: { width: '305 mm', height: '390 mm' },
};
const inchFolder = {
  style: 'twin-sleeve',
  dimensions: {
    panel: { width: '4 in', height: '5 3/4 in' },
    spine: '1/2 in',
    hem: '1 3/4 in',
    topFlap: '2 1/2 in',
    overlap: '1/2 in',
  },
  stock: { width: '12 in', height: '12 in' },
};

const drawIn = (spec: object, more: object = {}): Drawn =>
  mustDraw({ ...spec, convention: { outline: 'always', layers, ...more } });

/** Lines that the plan has, across the panel row and down a panel, in millimetres. */
function planned(drawn: Drawn) {
  const sleeve = sleeveOf(drawn.plan);
  const { width, height } = blankOf(sleeve);
  const { hem, topFlap, spine } = sleeve;
  // half of the outline's stroke of 0.25 mm lies outside the view: the middle of the visible half is measured
  const edge = 0.25 / 4;
  return {
    inRow: [edge, hem, hem + sleeve.width, hem + sleeve.width + spine, width - hem, width - edge],
    inColumn: [edge, topFlap, topFlap + sleeve.height, height - edge],
    row: topFlap + sleeve.height / 2,
    column: hem + sleeve.width / 2,
    width,
    height,
  };
}

function measured(drawn: Drawn, svg = drawn.svg, dpi = DPI) {
  const { row, column } = planned(drawn);
  const raster = rasterOf(svg, dpi);
  const centres = (strokes: readonly Stroke[]) => strokes.map(({ centre }) => centre);
  return {
    raster,
    inRow: centres(strokesInRow(raster, Math.round(pixels(row, dpi)))),
    inColumn: centres(strokesInColumn(raster, Math.round(pixels(column, dpi)))),
  };
}

const farthest = (measuredAt: readonly number[], plannedAt: readonly number[], dpi = DPI): number =>
  measuredAt.length === plannedAt.length
    ? Math.max(...plannedAt.map((mm, index) => Math.abs((measuredAt[index] ?? 0) - pixels(mm, dpi))))
    : Number.POSITIVE_INFINITY;

describe('the real size of a drawing', () => {
  it.each([
    ['cards of the museum shop, in millimetres', museumCards, {}],
    ['the same with a root in inches', museumCards, { rootUnit: 'in' }],
    ['the same with 96 units to the inch', museumCards, { userUnit: '1/96 in' }],
    [
      'the same with 72 units to the inch and a root in inches',
      museumCards,
      { rootUnit: 'in', userUnit: '1/72 in' },
    ],
    [
      'the same with hems turned in and corners cut',
      { ...museumCards, hem: { turn: 'in' }, corners: 'mitred' },
      {},
    ],
    ['a folder in inches', inchFolder, {}],
    ['a folder in inches, for a sheet that lies outside up', inchFolder, { sheetLies: 'outside-up' }],
  ])('is the plan’s, to one pixel at 300 dpi: %s', (_, spec, more) => {
    const drawn = drawIn(spec, more);
    const { raster, inRow, inColumn } = measured(drawn);
    const plan = planned(drawn);
    expect(Math.abs(raster.width - pixels(plan.width))).toBeLessThanOrEqual(1);
    expect(Math.abs(raster.height - pixels(plan.height))).toBeLessThanOrEqual(1);
    expect(farthest(inRow, plan.inRow)).toBeLessThanOrEqual(1);
    expect(farthest(inColumn, plan.inColumn)).toBeLessThanOrEqual(1);
  });

  it('is the plan’s with a root in px, which are 1/96 in', () => {
    const drawn = drawIn(inchFolder, { rootUnit: 'px', userUnit: '1/96 in' });
    const { inRow, inColumn } = measured(drawn, drawn.svg, 96);
    expect(farthest(inRow, planned(drawn).inRow, 96)).toBeLessThanOrEqual(1);
    expect(farthest(inColumn, planned(drawn).inColumn, 96)).toBeLessThanOrEqual(1);
  });

  it('has a known blank: 2W + S + 2h by 2H + o, here 12 in by 12 in', () => {
    const { raster } = measured(drawIn(inchFolder));
    expect([raster.width, raster.height]).toEqual([12 * DPI, 12 * DPI]);
  });

  it('of folded corners crosses every row at 45°', () => {
    const drawn = drawIn(inchFolder);
    const { hem } = sleeveOf(drawn.plan);
    const { width } = planned(drawn);
    const y = Math.round(pixels(hem / 2)) + 0.5;
    const [, left, , , , , right] = strokesInRow(rasterOf(drawn.svg, DPI), Math.floor(y));
    expect(Math.abs((left?.centre ?? 0) - (pixels(hem) - y))).toBeLessThanOrEqual(1);
    expect(Math.abs((right?.centre ?? 0) - (pixels(width - hem) + y))).toBeLessThanOrEqual(1);
  });

  it('is seen to be wrong when a 96th of an inch is read as a 72nd, and the other way round', () => {
    // what a reader of 72 units to the inch makes of numbers that count 96ths: 96/72 of the size, and 72/96
    for (const [userUnit, ratio] of [
      ['1/96 in', 96 / 72],
      ['1/72 in', 72 / 96],
    ] as const) {
      const drawn = drawIn(museumCards, { userUnit });
      const misread = drawn.svg.replace(/(width|height)="([\d.]+)mm"/gu, (_, name, value) => {
        return `${name}="${(Number(value) * ratio).toFixed(4)}mm"`;
      });
      const { inRow } = measured(drawn, misread);
      const plan = planned(drawn);
      expect(farthest(inRow, plan.inRow)).toBeGreaterThan(100);
      const hem = inRow[1] ?? 0;
      expect(hem / pixels(plan.inRow[1] ?? 0)).toBeCloseTo(ratio, 2);
    }
  });

  it('is seen to be wrong when one score lies 0.2 mm off', () => {
    const drawn = drawIn(inchFolder);
    const wrong = drawn.svg.replace('M 44.45 0 L 44.45 304.8', 'M 44.65 0 L 44.65 304.8');
    expect(wrong).not.toBe(drawn.svg);
    expect(farthest(measured(drawn, wrong).inRow, planned(drawn).inRow)).toBeGreaterThan(1);
  });
});

describe('lines along the top flap’s fold, measured between hem and spine', () => {
  const along = (convention: object) => {
    const drawn = mustDraw({ ...inchFolder, convention });
    const { hem, width, topFlap } = sleeveOf(drawn.plan);
    const [from, to] = [pixels(hem + 1), pixels(hem + width - 1)];
    // a half pixel below the fold's own row, where the stroke is painted in full
    const strokes = strokesInRow(rasterOf(drawn.svg, DPI), Math.floor(pixels(topFlap)));
    const inside = strokes.filter(({ start, end }) => start > from && end < to);
    return {
      lengths: inside.map(({ start, end }) => end - start),
      gaps: inside.slice(1).map(({ start }, index) => start - (inside[index]?.end ?? 0)),
    };
  };
  const allNear = (values: readonly number[], millimetres: number): boolean =>
    values.length > 5 && values.every((value) => Math.abs(value - pixels(millimetres)) <= 1);

  it('a dashed line of 0.25 mm has dashes of 12 and gaps of 3 line widths (ISO 128-2, from memory)', () => {
    const { lengths, gaps } = along({ layers: { score: { width: '0.25 mm', lineType: 'dashed' } } });
    expect(allNear(lengths, 12 * 0.25)).toBe(true);
    expect(allNear(gaps, 3 * 0.25)).toBe(true);
    expect(allNear(lengths, 12 * 0.3)).toBe(false);
  });

  it('a perforation has its cuts and ties in real size', () => {
    const { lengths, gaps } = along({
      layers: { score: continuous },
      score: { as: 'perforation', cut: '2.5 mm', tie: '1.8 mm' },
    });
    expect(allNear(lengths, 2.5)).toBe(true);
    expect(allNear(gaps, 1.8)).toBe(true);
  });
});
