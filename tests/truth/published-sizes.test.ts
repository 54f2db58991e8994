import { describe, expect, it } from 'vitest';
import { NM_PER_MM } from '../../shared/lengths/nanometres.ts';
import { sizeById, sizes } from '../../shared/sizes/catalogue.ts';

// Read in: the media table of IEEE-ISTO PWG 5101.1 as OpenPrinting/cups carries it (cups/pwg-media.c,
// commit 119f46f). B4 B5 B6 C6 DL C6/C5 E4 agree with a second list that quotes DIN 476-1/-2:1991,
// DIN 678-1:1998 and DIN 680:1995 (https://mailman.ntg.nl/pipermail/ntg-context/2004/006483.html).
const seriesTable = `
0   841x1189  1000x1414  917x1297
1   594x841   707x1000   648x917
2   420x594   500x707    458x648
3   297x420   353x500    324x458
4   210x297   250x353    229x324
5   148x210   176x250    162x229
6   105x148   125x176    114x162
7   74x105    88x125     81x114
8   52x74     62x88      57x81
9   37x52     44x62      40x57
10  26x37     31x44      28x40`;

type Row = readonly [id: string, width: number, height: number];

const seriesRows: readonly Row[] = seriesTable
  .trim()
  .split('\n')
  .flatMap((line) => {
    const [n, ...dimensions] = line.split(/\s+/u);
    return dimensions.map((text, column): Row => {
      const [width = 0, height = 0] = text.split('x').map(Number);
      return [`iso-${'abc'[column]}${n}`, width, height];
    });
  });

// Same list and commit; the name in it follows each row.
const otherRows: readonly Row[] = [
  ['iso-dl', 110, 220], // iso_dl; DIN 678-1
  ['iso-c6-c5', 114, 229], // iso_c6c5
  ['iso-c7-c6', 81, 162], // iso_c7c6
  ['iso-b6-c4', 125, 324], // iso_b6c4
  ['din-e4', 280, 400], // DIN 680, by the second list
  ['metric-italian', 110, 230], // om_italian
  ['metric-invite', 220, 220], // om_invite
  ['jis-b5', 182, 257], // jis_b5
  ['iso-ra4', 215, 305], // iso_ra4
  ['iso-sra4', 225, 320], // iso_sra4
];

const inMillimetres = (id: string): Row | undefined => {
  const size = sizeById(id);
  return size && [id, size.width / NM_PER_MM, size.height / NM_PER_MM];
};

describe('ISO 216, ISO 269, DIN and JIS sizes are the published ones', () => {
  it('has all 33 rows of the three series', () => {
    expect(seriesRows).toHaveLength(33);
  });

  it.each([...seriesRows, ...otherRows])('%s is %d x %d mm', (id, width, height) => {
    expect(inMillimetres(id)).toEqual([id, width, height]);
    expect(sizeById(id)).toMatchObject({ authority: 'standard', measure: 'metric' });
  });

  it('would notice JIS B5 in the place of ISO B5', () => {
    expect(inMillimetres('iso-b5')?.slice(1)).not.toEqual(inMillimetres('jis-b5')?.slice(1));
  });
});

describe('each series halves', () => {
  // ISO 216: halving the long side gives the next size, whole millimetres rounded down.
  const halved = ([, width, height]: Row): readonly number[] => [Math.floor(height / 2), width];

  it.each(['a', 'b', 'c'])('every next size of series %s is (floor(long / 2), short)', (letter) => {
    const rows = Array.from({ length: 11 }, (_, n) => inMillimetres(`iso-${letter}${n}`));
    const steps = rows.slice(1).map((row, index) => [row?.slice(1), rows[index] && halved(rows[index])]);
    expect(steps).toHaveLength(10);
    for (const [next, half] of steps) expect(next).toEqual(half);
  });

  it('long to short is the square root of 2 to within 0.02, down to size 8', () => {
    const ratios = seriesRows
      .filter(([id]) => Number(id.slice(5)) <= 8)
      .map(([id]) => {
        const size = sizeById(id);
        return size ? Math.abs(size.height / size.width - Math.SQRT2) : Number.NaN;
      });
    expect(ratios).toHaveLength(27);
    expect(Math.max(...ratios)).toBeLessThan(0.02);
  });
});

describe('US sizes are the published ones', () => {
  const NM_PER_64TH = 396_875; // 25.4 mm / 64, whole

  // Inches. PWG 5101.1, same list and commit, names na_number-9 … na_personal, na_a2_4.375x5.75in, na_5x7,
  // na_invoice, na_index-*. The three sheets, na_letter, na_legal, na_ledger: from memory.
  const standard: readonly Row[] = [
    ['us-9-envelope', 3 + 7 / 8, 8 + 7 / 8],
    ['us-10-envelope', 4 + 1 / 8, 9 + 1 / 2],
    ['us-11-envelope', 4 + 1 / 2, 10 + 3 / 8],
    ['us-12-envelope', 4 + 3 / 4, 11],
    ['us-14-envelope', 5, 11 + 1 / 2],
    ['us-monarch-envelope', 3 + 7 / 8, 7 + 1 / 2],
    ['us-personal-envelope', 3 + 5 / 8, 6 + 1 / 2],
    ['us-a2-envelope', 4.375, 5.75],
    ['us-a7', 5, 7],
    ['us-a9', 5 + 1 / 2, 8 + 1 / 2],
    ['us-3x5', 3, 5],
    ['us-4x6', 4, 6],
    ['us-5x8', 5, 8],
    ['us-letter', 8 + 1 / 2, 11],
    ['us-legal', 8 + 1 / 2, 14],
    ['us-ledger', 11, 17],
  ];

  // Inches. Trade custom: https://dimensionsguide.com/envelope-sizes and a second list that agrees (secondary
  // both), read for the A sizes and slim; A1 is in one list only; the A2 card and A9 envelope are from memory.
  const custom: readonly Row[] = [
    ['us-a1-envelope', 3 + 5 / 8, 5 + 1 / 8],
    ['us-a2', 4 + 1 / 4, 5 + 1 / 2],
    ['us-a6', 4 + 1 / 2, 6 + 1 / 4],
    ['us-a6-envelope', 4 + 3 / 4, 6 + 1 / 2],
    ['us-a7-envelope', 5 + 1 / 4, 7 + 1 / 4],
    ['us-a8', 5 + 1 / 4, 7 + 7 / 8],
    ['us-a8-envelope', 5 + 1 / 2, 8 + 1 / 8],
    ['us-a9-envelope', 5 + 3 / 4, 8 + 3 / 4],
    ['us-a10', 5 + 3 / 4, 9 + 1 / 4],
    ['us-a10-envelope', 6, 9 + 1 / 2],
    ['us-monarch-third', 3 + 1 / 2, 7 + 1 / 4], // a 7 1/4 x 10 1/2 in sheet, 10 1/2 / 3 = 3 1/2
    ['us-slim', 3 + 5 / 8, 8 + 5 / 8],
    ['us-slim-envelope', 3 + 7 / 8, 8 + 7 / 8],
  ];

  const expectInches = ([id, width, height]: Row) => {
    expect(sizeById(id)).toMatchObject({
      width: width * 64 * NM_PER_64TH,
      height: height * 64 * NM_PER_64TH,
      measure: 'inch',
    });
  };

  it.each(standard)('%s is %d x %d in, by the standard', (id, width, height) => {
    expectInches([id, width, height]);
    expect(sizeById(id)?.authority).toBe('standard');
  });

  it.each(custom)('%s is %d x %d in, by trade custom', (id, width, height) => {
    expectInches([id, width, height]);
    expect(sizeById(id)?.authority).toBe('trade custom');
  });

  it('us-letter-third is 3 2/3 x 8 1/2 in to the nearest nanometre', () => {
    // 11 in x 25 400 000 nm / 3 = 93 133 333.3 nm
    expect(sizeById('us-letter-third')).toMatchObject({ width: 93_133_333, height: 215_900_000 });
  });

  it('calls nothing a standard that the table above does not', () => {
    const listed = new Set([...seriesRows, ...otherRows, ...standard].map(([id]) => id));
    const claimed = sizes.filter((size) => size.authority === 'standard').map((size) => size.id);
    expect(claimed.filter((id) => !listed.has(id))).toEqual([]);
  });
});

describe('envelopes take the cards that they are published with', () => {
  // Clearance in mm, computed from the table: https://www.dimensionsguide.com/how-big-is-a-standard-envelope/
  // (secondary) pairs C6 with A6, C5 with A5, C4 with A4, DL with A4 in thirds.
  it.each([
    ['iso-c6', 'iso-a6', 9, 14],
    ['iso-c5', 'iso-a5', 14, 19],
    ['iso-c4', 'iso-a4', 19, 27],
    ['iso-dl', 'iso-a4-third', 11, 10],
  ])('%s takes %s with %d and %d mm to spare', (envelopeId, cardId, across, along) => {
    const envelope = sizeById(envelopeId);
    const card = sizeById(cardId);
    expect(envelope?.takes).toContain(cardId);
    expect((envelope?.width ?? 0) - (card?.width ?? 0)).toBe(across * NM_PER_MM);
    expect((envelope?.height ?? 0) - (card?.height ?? 0)).toBe(along * NM_PER_MM);
  });

  // B6 takes the C6 envelope, B5 the C5, B4 the C4: 11 14, 14 21, 21 29 mm to spare (same page, computed).
  it.each([
    [6, 11, 14],
    [5, 14, 21],
    [4, 21, 29],
  ])('B%d leaves %d and %d mm around the C envelope of its number', (n, across, along) => {
    const outer = sizeById(`iso-b${n}`);
    const inner = sizeById(`iso-c${n}`);
    expect(outer?.kinds).toContain('envelope');
    expect((outer?.width ?? 0) - (inner?.width ?? 0)).toBe(across * NM_PER_MM);
    expect((outer?.height ?? 0) - (inner?.height ?? 0)).toBe(along * NM_PER_MM);
  });
});
