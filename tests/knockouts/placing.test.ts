import { describe, expect, it } from 'vitest';
import { proofOf } from '../../shared/folding/proof-of.ts';
import { placeKnockouts } from '../../shared/knockouts/place-knockouts.ts';
import { placesOf } from '../../shared/knockouts/places.ts';
import { inMm } from '../../shared/lengths/show-length.ts';
import { planReply } from '../../shared/plan-reply/plan-reply.ts';
import { foldOfFolder } from '../../src/folders/fold-of-folder.ts';
import { foldOrRefuse } from '../../src/folders/fold-or-refuse.ts';
import { fontsFor } from '../../src/folders/fonts-for.ts';
import { planFolder } from '../../src/folders/plan-folder.ts';
import { svgOfPiece } from '../../src/folders/svg-of-piece.ts';
import { CannotBeFolded, type Refusal } from '../../src/problem/cannot-be-folded.ts';
import { areaOfPolygon, drawCutOut, polygonsOf } from '../support/cut-out.ts';
import { readSvg } from '../support/read-svg.ts';
import { solved } from '../support/solved.ts';

const sleeve = {
  style: 'twin-sleeve',
  units: 'mm',
  dimensions: { panel: { width: 100, height: 140 }, spine: 14, hem: 20, topFlap: 60, overlap: 16 },
  stock: { width: 400, height: 400 },
  prefer: 'least-paper',
};

const spec = (knockouts: readonly object[], more: object = {}) => ({ ...sleeve, ...more, knockouts });

/** What is refused, and why. */
function refusalOf(knockouts: readonly object[]): Refusal {
  try {
    planFolder(solved.spec(spec(knockouts)));
  } catch (error) {
    if (error instanceof CannotBeFolded) return error.refusal;
    throw error;
  }
  throw new Error('nothing was refused');
}

const window = (place: string, more: object = {}) => ({
  kind: 'figure',
  on: { place },
  figure: { shape: 'circle', diameter: 20 },
  ...more,
});

describe('places', () => {
  const places = placesOf(proofOf(solved(sleeve)));
  const named = (name: string) => {
    const place = places.find((each) => each.name === name);
    if (!place) throw new Error(`no ${name}`);
    return {
      side: place.side,
      left: inMm(place.left),
      top: inMm(place.top),
      width: inMm(place.right - place.left),
      height: inMm(place.bottom - place.top),
    };
  };

  it('are the covers, the spine and the pockets of a twin sleeve, by their size', () => {
    // the flat form begins at the hem's fold, at 20; the panel row at the top flap's, at 60
    expect(named('front cover')).toEqual({ side: 'outside', left: 20, top: 60, width: 100, height: 140 });
    expect(named('spine')).toEqual({ side: 'outside', left: 120, top: 60, width: 14, height: 140 });
    expect(named('back cover')).toEqual({ side: 'outside', left: 134, top: 60, width: 100, height: 140 });
    expect(named('front pocket')).toEqual({ side: 'inside', left: 20, top: 60, width: 100, height: 140 });
    expect(named('outside')).toEqual({ side: 'outside', left: 20, top: 60, width: 214, height: 140 });
    // 20 mm of hem turned out lie over the cover
    expect(named('left hem')).toMatchObject({ side: 'outside', width: 20 });
    expect(named('front')).toMatchObject({ side: 'outside', left: 40, width: 80 });
  });

  it('have names of their own, and areas', () => {
    expect(new Set(places.map(({ name }) => name)).size).toBe(places.length);
    for (const { left, right, top, bottom } of places)
      expect(Math.min(right - left, bottom - top)).toBeGreaterThan(0);
  });

  it('are listed in every plan', () => {
    const plan = planFolder(solved.spec(sleeve));
    expect(plan.places).toHaveLength(places.length);
    expect(plan.places).toContainEqual({
      name: 'spine',
      seenFrom: 'outside',
      width: { mm: 14, inch: '≈ 35/64' },
      height: { mm: 140, inch: '≈ 5 33/64' },
    });
    expect(plan).not.toHaveProperty('knockouts');
  });
});

describe('a window through every layer', () => {
  it('gives one opening of the same size in each layer, mirrored where the layer is turned over', () => {
    const heart = { kind: 'figure', on: { place: 'front', anchor: 'top', offset: { down: 15 } } };
    const raw = spec([{ ...heart, figure: { shape: 'heart', width: 25 }, turn: 20, through: 'every-layer' }]);
    const areas = polygonsOf(drawCutOut(raw), 'knockout').map(areaOfPolygon);
    expect(areas).toHaveLength(2);
    expect(areas[0]).toBeCloseTo(areas[1] ?? 0, 1);
    // a square of side s with a half circle on two sides: s² + π/4·s², and the width is s·(1 + 1/√2)
    const side = 25 / (1 + Math.SQRT1_2);
    expect(areas[0]).toBeCloseTo(side ** 2 * (1 + Math.PI / 4), 0);
    const plan = planFolder(solved.spec(raw));
    expect(plan.knockouts?.list[0]?.cuts).toEqual([
      // the sheet is drawn with its inside up, and the cover is looked at from outside
      { panels: ['front'], face: 'outside', mirrored: true, reachesEdge: false },
      { panels: ['top flap, front'], face: 'inside', mirrored: false, reachesEdge: false },
    ]);
    expect(plan.knockouts).toMatchObject({ openings: 2, outlineChanges: false });
  });

  it('is cut three times where the flaps overlap', () => {
    // the bottom flap ends 60 − 16 = 44 mm below the top; the top flap 60 mm below it
    const low = spec([
      window('front', {
        on: { place: 'front', anchor: 'top', offset: { down: 46 } },
        figure: { shape: 'circle', diameter: 12 },
        through: 'every-layer',
      }),
    ]);
    const areas = polygonsOf(drawCutOut(low), 'knockout').map(areaOfPolygon);
    expect(areas).toHaveLength(3);
    for (const area of areas) expect(area).toBeCloseTo(Math.PI * 36, 0);
  });

  it('between two named layers is cut in those and what lies between', () => {
    const at = {
      on: { place: 'front', anchor: 'top', offset: { down: 46 } },
      figure: { shape: 'circle', diameter: 12 },
    };
    const panels = (through: unknown) =>
      planFolder(solved.spec(spec([window('front', { ...at, through })]))).knockouts?.list[0]?.cuts.map(
        (cut) => cut.panels[0],
      );
    expect(panels({ from: 'front', to: 'top flap, front' })).toEqual(['front', 'top flap, front']);
    expect(panels({ from: 'bottom flap, front', to: 'front' })).toEqual([
      'front',
      'top flap, front',
      'bottom flap, front',
    ]);
    expect(panels({ from: 'top flap, front' })).toEqual(['top flap, front']);
  });
});

describe('a notch at a pocket’s mouth', () => {
  it('is a circle on the open blank, half of it in the hem', () => {
    const drawn = drawCutOut(
      spec([{ kind: 'thumb-notch', pocket: 'back pocket', offset: { down: 35 }, radius: 12 }]),
    );
    const [notch = []] = polygonsOf(drawn, 'knockout');
    expect(areaOfPolygon(notch)).toBeCloseTo(Math.PI * 144, 0);
    const xs = notch.map(({ x }) => x);
    // the hem's fold lies 20 mm from the right edge of a blank of 2 · (100 + 20) + 14 = 254 mm
    expect((Math.min(...xs) + Math.max(...xs)) / 2).toBeCloseTo(234, 1);
  });
});

describe('rounded corners', () => {
  it('take the corners off that are not at the spine, in every layer', () => {
    const raw = spec([{ kind: 'rounded-corners', place: 'front cover', radius: 10 }]);
    const areas = polygonsOf(drawCutOut(raw), 'knockout').map(areaOfPolygon);
    // what a rounding of radius r takes off, (1 − π/4)·r², in the four layers that meet at each of two corners
    expect(areas).toHaveLength(2);
    for (const area of areas) expect(area).toBeCloseTo(4 * (1 - Math.PI / 4) * 100, 0);
  });
});

describe('inlays and frames', () => {
  const inlaid = window('front', { inlay: { margin: 5, frame: { width: 4, reveal: 1 } } });

  it('are listed with their size and drawn by themselves', () => {
    const { knockouts } = planFolder(solved.spec(spec([window('back'), inlaid])));
    expect(
      knockouts?.pieces.map(({ name, kind, knockout, count }) => ({ name, kind, knockout, count })),
    ).toEqual([
      { name: 'inlay-2', kind: 'inlay', knockout: 1, count: 1 },
      { name: 'frame-2', kind: 'frame', knockout: 1, count: 1 },
    ]);
    // a circle of 20 mm, 5 mm larger all around; the frame is 1 + 4 mm larger all around
    for (const { width, height } of knockouts?.pieces ?? []) {
      expect(width.mm).toBeCloseTo(30, 1);
      expect(height.mm).toBeCloseTo(30, 1);
    }
  });

  it('are drawn in the spec’s convention by their names, and others are 404', () => {
    const read = solved.spec(
      spec([window('back'), inlaid], { convention: { layers: { cut: { colour: '#000000' } } } }),
    );
    const frame = readSvg(svgOfPiece(read, 'frame-2'));
    expect(frame.title).toBe('Frame around the circle no. 2, 30 mm by 30 mm');
    // the ring between circles of 22 mm and 30 mm
    expect(frame.groups.find(({ id }) => id === 'cut')?.paths).toHaveLength(1);
    expect(frame.groups.find(({ id }) => id === 'knockout')?.paths).toHaveLength(1);
    expect(frame.groups.find(({ id }) => id === 'cut')?.attributes.stroke).toBe('#000000');
    expect(() => svgOfPiece(read, 'inlay-1')).toThrow(expect.objectContaining({ statusCode: 404 }));
  });

  it('that are raised on a pocket make the spine wider by what closing leaves of them', () => {
    const filled = (knockouts: readonly object[]) =>
      solved({
        style: 'twin-sleeve',
        contents: { item: { size: 'iso-a6' } },
        grid: 'none',
        stock: { size: 'iso-a3' },
        prefer: 'least-paper',
        knockouts,
      }).dimensions.spine ?? 0;
    const raised = (place: string) =>
      window(place, {
        figure: { shape: 'circle', diameter: '20 mm' },
        inlay: { frame: { width: '4 mm', raised: '2 mm' } },
      });
    const plain = filled([]);
    // 2 mm of foam less a fifth
    expect(inMm(filled([raised('front pocket')]) - plain)).toBeCloseTo(1.6, 6);
    expect(inMm(filled([raised('front pocket'), raised('back pocket')]) - plain)).toBeCloseTo(3.2, 6);
    expect(filled([raised('front cover')])).toBe(plain);
  });
});

describe('what cannot be placed is refused by name', () => {
  it.each([
    [
      'a place',
      [window('front covr')],
      '/knockouts/0/on/place',
      'there is no place "front covr"',
      /^did you mean "front cover"\? known here: .*spine/u,
    ],
    [
      'a pocket',
      [window('front'), { kind: 'thumb-notch', pocket: 'left' }],
      '/knockouts/1/pocket',
      'there is no pocket "left"',
      /front pocket, back pocket/u,
    ],
    [
      'a layer',
      [window('front', { through: { from: 'front', to: 'back' } })],
      '/knockouts/0/through/to',
      'there is no layer under it called "back"',
      /^known here: front, bottom flap, front$/u,
    ],
    [
      'a radius',
      [{ kind: 'rounded-corners', place: 'spine', radius: 10 }],
      '/knockouts/0/radius',
      'the corners are rounder than the place is large',
      /7 mm/u,
    ],
    [
      'measures that do not go together',
      [window('front', { figure: { shape: 'rounded-rectangle', width: 10, height: 10, corner: 8 } })],
      '/knockouts/0/figure/corner',
      expect.stringContaining('corner'),
      /5 mm/u,
    ],
    [
      'artwork',
      [
        window('front', {
          figure: { artwork: '<svg xmlns="http://www.w3.org/2000/svg"><text>hi</text></svg>', width: 10 },
        }),
      ],
      '/knockouts/0/figure/artwork',
      expect.stringContaining('text'),
      /./u,
    ],
    [
      'a repeat',
      [window('front', { repeat: { repeat: 'edge', length: 50 } })],
      '/knockouts/0/repeat',
      expect.stringContaining('count and pitch'),
      /./u,
    ],
    [
      'too much of it',
      [
        window('outside', {
          repeat: { repeat: 'grid', columns: 20, rows: 20, across: '4 mm', down: '4 mm' },
          figure: { shape: 'star', points: 20, diameter: 3 },
          through: 'every-layer',
        }),
      ],
      '/knockouts/0',
      expect.stringContaining('straight parts'),
      /less often/u,
    ],
  ])('%s', (_, knockouts, path, message, remedy) => {
    const [error] = refusalOf(knockouts).errors;
    expect(error).toMatchObject({ path, message });
    expect(error?.remedy).toMatch(remedy);
  });

  it('what must not be cut is refused with its size and what is short', () => {
    const pair = (right: number) => [
      window('front', { on: { place: 'front', offset: { left: 10.5 } } }),
      window('front', { on: { place: 'front', offset: { right } } }),
    ];
    const refusal = refusalOf(pair(10.5));
    expect(refusal).toMatchObject({ bound: 'web-thin', shortfall: { mm: 0.5 } });
    expect(refusal.errors.map(({ path }) => path)).toEqual(['/knockouts/0', '/knockouts/1']);
    expect(refusal.errors[0]?.message).toContain('only 1 mm');
    expect(() => planFolder(solved.spec(spec(pair(13))))).not.toThrow();
  });

  it('the list has its limits', () => {
    expect(() => solved.spec(spec(Array.from({ length: 41 }, () => window('front'))))).toThrow();
    expect(() =>
      solved.spec(spec([window('front', { on: { place: 'front', offset: { left: 1, right: 1 } } })])),
    ).toThrow();
  });
});

describe('a plan with knockouts', () => {
  it('is what its schema says, with findings among the warnings', () => {
    const near = window('front', { on: { place: 'front', anchor: 'left', offset: { right: 3 } } });
    const plan = planReply.parse(planFolder(solved.spec(spec([near]))));
    expect(plan.warnings).toContainEqual(
      expect.objectContaining({ code: 'near-score', path: '/knockouts/0' }),
    );
    expect(plan.knockouts?.findings[0]).toMatchObject({
      number: 1,
      code: 'near-score',
      size: { mm: 3 },
      limit: { mm: 6 },
    });
  });

  it('has the same folded form as without, and says that FOLD leaves them out', () => {
    const folded = foldOrRefuse(solved.spec(spec([window('front')])));
    const plain = foldOrRefuse(solved.spec(sleeve));
    expect(folded.proof).toEqual(plain.proof);
    const [with_, without] = [spec([window('front')]), sleeve].map((raw) => foldOfFolder(solved.spec(raw)));
    expect(with_?.file_description).toContain('Knockouts are left out');
    expect({ ...with_, file_description: '' }).toEqual({ ...without, file_description: '' });
    expect(without?.file_description).not.toContain('Knockouts');
  });
});

describe('lettering', () => {
  const word = {
    kind: 'figure',
    on: { place: 'front' },
    figure: { lettering: 'Quay', height: 20 },
    turn: -90,
  };

  it('is cut in the fonts that come along, with bridges', async () => {
    const read = solved.spec(spec([word]));
    const folded = foldOrRefuse(read, await fontsFor(read));
    expect(folded.knockouts?.paper.islands).toEqual([]);
    expect(folded.knockouts?.openings.length).toBeGreaterThan(3);
  });

  it('is refused where its font was not opened, or cannot be', async () => {
    const placing = placeKnockouts(proofOf(solved(spec([word]))), new Map());
    expect(placing).toMatchObject({ ok: false, faults: [{ path: ['knockouts', 0, 'figure', 'font'] }] });
    const broken = { ...word, figure: { ...word.figure, font: { file: 'AAEAAAAA' } } };
    await expect(fontsFor(solved.spec(spec([broken])))).rejects.toThrow(CannotBeFolded);
  });
});
