import { describe, expect, it } from 'vitest';
import { mm } from '../../shared/lengths/nanometres.ts';
import { grammageOf, type PaperGrade } from '../../shared/paper/basis-weight.ts';
import { caliperFromBulk, pointsToNm } from '../../shared/paper/caliper.ts';
import { type PaperSort, paperSorts } from '../../shared/paper/usual-bulk.ts';

// US Government Paper Specification Standards, volume 11 (February 1999), one page for each JCP code:
// www.gpo.gov/customers/text/vol11/068.htm (K10) 006.htm (A55) 016.htm (A91) 011.htm (A70) 079.htm (L40)
// 111.htm (V20) 110.htm (V10), and from a university's archive of the same volume A175, L20 and V25.
interface Row {
  readonly code: string;
  readonly grade: PaperGrade;
  readonly pounds: number;
  readonly grammage: number;
  readonly mm?: number;
  readonly inch?: number;
}

const rows = (
  code: string,
  grade: PaperGrade,
  list: readonly (readonly [pounds: number, grammage: number, mm?: number, inch?: number])[],
): readonly Row[] =>
  list.map(([pounds, grammage, mm, inch]) => ({
    code,
    grade,
    pounds,
    grammage,
    ...(mm === undefined ? {} : { mm }),
    ...(inch === undefined ? {} : { inch }),
  }));

const index = rows('K10', 'index', [
  [90, 165, 0.19, 0.0075],
  [110, 200, 0.23, 0.0091],
  [140, 255, 0.29, 0.0114],
  [170, 305, 0.35, 0.0138],
]);

const text = [
  ...rows('A55', 'offset', [
    [40, 60, 0.075, 0.003],
    [50, 75, 0.1, 0.0039],
    [60, 90, 0.12, 0.0047],
    [70, 105, 0.14, 0.0055],
    [80, 120, 0.16, 0.0063],
  ]),
  ...rows('A91', 'text', [
    [70, 105, 0.14, 0.0055],
    [80, 120, 0.16, 0.0063],
    [100, 150, 0.2, 0.0079],
  ]),
];

const recycled = rows('A70', 'offset', [
  [40, 60, 0.075],
  [45, 67, 0.09],
  [50, 75, 0.105],
  [60, 90, 0.13],
]);

const coated = rows('A175', 'book', [[38, 55, 0.055, 0.0022]]);

const weightOnly = [
  ...rows('L20', 'cover', [
    [50, 135],
    [65, 175],
    [80, 215],
  ]),
  ...rows('L40', 'cover', [
    [65, 175],
    [80, 215],
  ]),
  ...rows('V25', 'bond', [
    [17.5, 66, 0.105, 0.0041],
    [21, 80, 0.125, 0.0049],
  ]),
  ...rows('V20', 'bond', [
    [20, 75],
    [24, 90],
  ]),
  ...rows('V10', 'bond', [
    [24, 90],
    [28, 105],
    [32, 120],
    [40, 150],
  ]),
];

const all = [...index, ...text, ...recycled, ...coated, ...weightOnly];

describe('grammage of the government’s papers', () => {
  // The standard rounds to 5 g/m², so the exact factor is within 2.5 % of it.
  it.each(all)('$code: $pounds lb $grade is $grammage g/m² to 2.5 %', ({ grade, pounds, grammage }) => {
    expect(Math.abs(grammageOf({ pounds, grade }) / grammage - 1)).toBeLessThanOrEqual(0.025);
  });

  it('would notice the wrong grade: 110 lb index is not 110 lb cover', () => {
    expect(Math.abs(grammageOf({ pounds: 110, grade: 'cover' }) / 200 - 1)).toBeGreaterThan(0.025);
  });
});

describe('caliper from the usual bulk', () => {
  // The same pages allow ±0.013 mm, and ±0.020 mm on 305 g/m² index.
  const tolerance = (row: Row): number => (row.grammage === 305 ? 0.02 : 0.013);
  const away = (row: Row, sort: PaperSort): number =>
    Math.abs(caliperFromBulk(row.grammage, sort.bulk) - mm(row.mm ?? Number.NaN));

  it.each(index)('$code: $grammage g/m² index is $mm mm', (row) => {
    expect(away(row, paperSorts.index)).toBeLessThanOrEqual(mm(tolerance(row)));
  });

  it.each([...text, ...recycled])('$code: $grammage g/m² text is $mm mm', (row) => {
    expect(away(row, paperSorts.text)).toBeLessThanOrEqual(mm(tolerance(row)));
  });

  it.each(coated)('$code: $grammage g/m² gloss coated is $mm mm', (row) => {
    expect(away(row, paperSorts.coated)).toBeLessThanOrEqual(mm(tolerance(row)));
  });

  it('would notice the wrong sort: index at the bulk of text is out of tolerance', () => {
    for (const row of index) expect(away(row, paperSorts.text)).toBeGreaterThan(mm(tolerance(row)));
  });
});

describe('points of caliper', () => {
  const both = all.filter((row) => row.inch !== undefined);

  it.each(both)('$code: $inch in is the $mm mm beside it, to the rounding', (row) => {
    const points = (row.inch ?? Number.NaN) * 1000;
    expect(Math.abs(pointsToNm(points) - mm(row.mm ?? Number.NaN))).toBeLessThanOrEqual(mm(0.0025));
  });

  it('JCP L80, cast-coated cover: 10 points is 0.26 mm to the 0.013 mm of its tolerance', () => {
    expect(Math.abs(pointsToNm(10) - mm(0.26))).toBeLessThanOrEqual(mm(0.013));
  });
});
