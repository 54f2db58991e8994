import { describe, expect, it } from 'vitest';
import type { Finding } from '../../shared/knockouts/checks/finding.ts';
import { inMm } from '../../shared/lengths/show-length.ts';
import { foldOrRefuse } from '../../src/folders/fold-or-refuse.ts';
import { solved } from '../support/solved.ts';

/*
 * Each check is shown to speak where it must and to be silent where it must. The front cover, 100 mm wide and 140 mm
 * high, has the hem's 20 mm at its right side; what is left of it, `front`, is 80 mm wide. Measures by school geometry.
 */
const sleeve = {
  style: 'twin-sleeve',
  units: 'mm',
  dimensions: { panel: { width: 100, height: 140 }, spine: 14, hem: 20, topFlap: 60, overlap: 16 },
  stock: { width: 400, height: 400 },
  prefer: 'least-paper',
};

interface Figure {
  readonly on?: object;
  readonly turn?: number;
  readonly through?: unknown;
  readonly repeat?: object;
}

const figure = (spec: object, offset: object = {}, { on, ...more }: Figure = {}) => ({
  kind: 'figure',
  on: { place: 'front', offset, ...on },
  figure: spec,
  ...more,
});

const circle = (diameter: number, offset: object = {}, more: Figure = {}) =>
  figure({ shape: 'circle', diameter }, offset, more);

const rectangle = (width: number, height: number, offset: object = {}, more: Figure = {}) =>
  figure({ shape: 'rounded-rectangle', width, height, corner: 0 }, offset, more);

const findings = (knockouts: readonly object[], more: object = {}): readonly Finding[] =>
  foldOrRefuse(solved.spec({ ...sleeve, ...more, knockouts })).knockouts?.findings ?? [];

const codes = (knockouts: readonly object[], more: object = {}): readonly string[] =>
  findings(knockouts, more).map(({ code }) => code);

const found = (code: string, knockouts: readonly object[], more: object = {}): Finding => {
  const finding = findings(knockouts, more).find((each) => each.code === code);
  if (!finding) throw new Error(`no ${code}`);
  return finding;
};

const size = (finding: Finding): number => inMm(finding.size ?? Number.NaN);

describe('nothing is said', () => {
  it('of a window in the middle of a cover, in its seen layer', () => {
    expect(findings([circle(30)])).toEqual([]);
  });

  it('of two windows far enough apart', () => {
    expect(findings([circle(20, { left: 20 }), circle(20, { right: 20 })])).toEqual([]);
  });
});

describe('webs', () => {
  // circles of 20 mm with their middles 20 + web apart
  const pair = (web: number, more: object = {}) =>
    found('web-thin', [circle(20, { left: (20 + web) / 2 }), circle(20, { right: (20 + web) / 2 })], more);

  it('of less than 1.5 mm are refused, of less than 2 mm told, with their width and place', () => {
    expect(pair(1.2)).toMatchObject({ does: 'refuse', knockouts: [0, 1] });
    expect(size(pair(1.2))).toBeCloseTo(1.2, 1);
    expect(pair(1.8)).toMatchObject({ does: 'tell' });
    expect(size(pair(1.8))).toBeCloseTo(1.8, 1);
    // hem 20, panel 100: `front` runs on the blank from 40 to 120, its middle is 80; rows: 60 and half of 140
    const [at] = pair(1.2).at;
    expect(inMm(at?.x ?? 0)).toBeCloseTo(80, 0);
    expect(inMm(at?.y ?? 0)).toBeCloseTo(130, 0);
  });

  it('of 2 mm and more are not', () => {
    expect(codes([circle(20, { left: 11.05 }), circle(20, { right: 11.05 })])).not.toContain('web-thin');
  });

  it('are held against the spec’s own limits', () => {
    expect(pair(2.5, { knockoutLimits: { goodWeb: '3 mm' } })).toMatchObject({ does: 'tell' });
    expect(pair(2.5, { knockoutLimits: { leastWeb: '2.6 mm' } })).toMatchObject({ does: 'refuse' });
    expect(
      codes([circle(20, { left: 10.5 }), circle(20, { right: 10.5 })], {
        knockoutLimits: { goodWeb: '0.8 mm' },
      }),
    ).not.toContain('web-thin');
  });

  it('within one figure are found too', () => {
    // two windows of 20 by 20 mm with a bar of 1 mm between them
    const double = (bar: number) =>
      figure({ artwork: `M0 0 H20 V20 H0 Z M${20 + bar} 0 h20 v20 h-20 Z`, width: 40 + bar });
    expect(size(found('web-thin', [double(1)]))).toBeCloseTo(1, 1);
    expect(codes([double(2.1)])).not.toContain('web-thin');
  });

  it('that are slender are told: 60 mm long and 4 mm wide is 15 times', () => {
    const slots = (gap: number) => [
      rectangle(60, 6, { up: (6 + gap) / 2 }),
      rectangle(60, 6, { down: (6 + gap) / 2 }),
    ];
    expect(found('web-slender', slots(4)).message).toContain('15 times');
    expect(codes(slots(5.9))).not.toContain('web-slender');
    expect(codes(slots(4), { knockoutLimits: { slenderest: 20 } })).not.toContain('web-slender');
  });

  it('of a net of openings are no slender strips', () => {
    const net = circle(
      8,
      {},
      { repeat: { repeat: 'grid', columns: 5, rows: 8, across: '12 mm', down: '12 mm' } },
    );
    expect(codes([net])).not.toContain('web-slender');
  });
});

describe('openings', () => {
  it('of less than 2 mm are told', () => {
    expect(size(found('opening-narrow', [circle(1.6)]))).toBeCloseTo(1.6, 1);
    expect(size(found('opening-narrow', [rectangle(30, 1.2, {}, { turn: 30 })]))).toBeCloseTo(1.2, 1);
    expect(codes([circle(2.2)])).not.toContain('opening-narrow');
  });

  it('that are ribbon slots are narrow on purpose', () => {
    const slots = { kind: 'ribbon-slots', on: { place: 'front' }, ribbon: '10 mm' };
    expect(codes([slots])).not.toContain('opening-narrow');
  });
});

describe('scores, edges, glue and mouths', () => {
  it('tell of an opening that comes near to a score', () => {
    // `front` ends at the spine score, on its left side as it is seen
    const near = (gap: number) => rectangle(20, 20, { right: gap }, { on: { anchor: 'left' } });
    expect(size(found('near-score', [near(3)]))).toBeCloseTo(3, 2);
    expect(codes([near(6.1)])).not.toContain('near-score');
    expect(codes([near(3)], { knockoutLimits: { toScore: '2 mm' } })).not.toContain('near-score');
  });

  it('tell of an opening that is cut across a fold, with how much of it', () => {
    const across = rectangle(20, 28, { left: 10 }, { on: { anchor: 'left' } });
    const finding = found('fold-cut', [across]);
    expect(finding).toMatchObject({ does: 'tell', knockouts: [0] });
    // the fold runs over the panel and both flaps: 28 mm of 2 · 140 + 16 are 9 %
    expect(finding.message).toContain('28 mm, 9 %');
    expect(codes([across])).not.toContain('near-score');
  });

  it('refuse an opening that leaves too little of a fold', () => {
    // through every layer the spine is cut in the panel, and in the flaps that cover it
    const all = (height: number) =>
      rectangle(20, height, {}, { on: { place: 'spine', anchor: 'centre' }, through: 'every-layer' });
    expect(found('fold-cut-away', [all(130)])).toMatchObject({ does: 'refuse' });
    expect(codes([all(60)])).not.toContain('fold-cut-away');
  });

  it('tell of an opening near to the paper’s edge, and of one that reaches it', () => {
    // the hem's own edge lies at its left side as it is seen from outside
    const hem = (offset: object) => [circle(8, offset, { on: { place: 'left hem', anchor: 'left' } })];
    expect(size(found('near-edge', hem({ right: 4 })))).toBeCloseTo(4, 1);
    expect(codes(hem({ right: 6.1 }))).not.toContain('near-edge');
    expect(found('edge-cut', hem({ left: 3 }))).toMatchObject({ does: 'tell' });
    expect(codes(hem({ left: 3 }))).not.toContain('near-edge');
  });

  it('tell of an opening near to a pocket’s mouth, but not of a notch', () => {
    const flap = (offset: object) => [
      circle(8, offset, {
        on: { place: 'front pocket', anchor: 'left' },
        through: { from: 'bottom flap, front' },
      }),
    ];
    // the flap is cut between the hem's fold, which is at the mouth, and the spine
    expect(size(found('near-mouth', flap({ right: 3, down: 40 })))).toBeCloseTo(3, 1);
    expect(codes(flap({ right: 7, down: 40 }))).not.toContain('near-mouth');
    expect(codes([{ kind: 'thumb-notch', pocket: 'front pocket', offset: { down: 40 } }])).not.toContain(
      'near-mouth',
    );
  });

  it('tell of an opening through glue and near to it, and refuse what takes most of it', () => {
    // the seam: 60 mm of top flap, under which the bottom flap ends 16 mm from its edge
    const pocket = (down: number, more: Figure = {}) =>
      circle(10, { down }, { on: { place: 'front pocket', anchor: 'top' }, ...more });
    const seam = findings([pocket(45, { through: 'every-layer' })]).filter(({ code }) =>
      code.startsWith('glue'),
    );
    expect(seam.map(({ does }) => does)).toEqual(['tell']);
    expect(seam[0]?.message).toContain('the glue at the seam');
    expect(codes([pocket(10)]).filter((code) => code.includes('glue'))).toEqual([]);
    const strip = rectangle(
      200,
      20,
      {},
      {
        on: { place: 'inside', anchor: 'top', offset: { down: 42 } },
        through: { from: 'bottom flap, front', to: 'bottom flap, front' },
      },
    );
    expect(findings([strip]).some(({ code, does }) => code === 'glue-cut' && does === 'tell')).toBe(true);
    const wide = rectangle(
      230,
      20,
      {},
      {
        on: { place: 'inside', anchor: 'top', offset: { down: 42 } },
        through: 'every-layer',
      },
    );
    expect(found('glue-cut-away', [wide])).toMatchObject({ does: 'refuse' });
  });
});

describe('loose paper', () => {
  const ring = (bridges: 'automatic' | 'none') =>
    figure({ artwork: 'M0 0 H40 V40 H0 Z M10 10 V30 H30 V10 Z', width: 40, bridges });

  it('is told where it falls out, with its area', () => {
    expect(found('paper-falls-out', [ring('none')]).message).toContain('400 mm²');
    expect(codes([ring('automatic')])).not.toContain('paper-falls-out');
  });

  it('that takes the sheet apart is refused', () => {
    const strip = rectangle(10, 150, {}, { on: { place: 'back cover' }, through: 'every-layer' });
    expect(found('sheet-apart', [strip])).toMatchObject({ does: 'refuse' });
    expect(codes([rectangle(10, 90, {}, { on: { place: 'back cover' } })])).not.toContain('sheet-apart');
  });
});

describe('places and overlaps', () => {
  it('tell of a figure that lies partly off its place, and refuse one that cuts nothing', () => {
    const off = (left: number) => [circle(20, { left }, { on: { place: 'front cover', anchor: 'left' } })];
    // half of it lies over the spine
    expect(found('off-place', off(10))).toMatchObject({
      does: 'tell',
      message: expect.stringContaining('50 %'),
    });
    expect(codes(off(0))).not.toContain('off-place');
    const nothing = [circle(20, { right: 150 }, { on: { place: 'front cover', anchor: 'right' } })];
    expect(found('nothing-cut', nothing)).toMatchObject({ does: 'refuse' });
  });

  it('tell of knockouts that overlap, and of which', () => {
    expect(
      found('knockouts-overlap', [circle(20), circle(5, { up: 30 }), circle(20, { right: 10 })]),
    ).toMatchObject({
      knockouts: [0, 2],
    });
    expect(codes([circle(20, { left: 15 }), circle(20, { right: 15 })])).not.toContain('knockouts-overlap');
  });
});

describe('corners', () => {
  const square = rectangle(20, 20);
  const cutter = (more: object) => ({ cutter: { width: 500, height: 500, ...more } });

  it('that are sharper than the cutter turns are told, unless they are rounded', () => {
    expect(found('corner-sharp', [square], cutter({ leastCornerRadius: '1 mm' })).message).toContain(
      '4 corners',
    );
    expect(codes([circle(20)], cutter({ leastCornerRadius: '1 mm' }))).not.toContain('corner-sharp');
    expect(codes([square], cutter({}))).not.toContain('corner-sharp');
    expect(codes([square], cutter({ leastCornerRadius: '1 mm', roundCorners: true }))).toEqual([]);
  });
});
