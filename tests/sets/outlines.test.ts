import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nest, runToEnd } from '../../shared/nesting/nest.ts';
import { liesMirrored, lying } from '../../shared/sets/lying.ts';
import { sheetsOfSet } from '../../shared/sets/nested-paper.ts';
import { setSpec } from '../../shared/sets/set-spec.ts';
import { sheetFile } from '../../shared/sets/sheet-file.ts';
import { type PlannedSet, showSetPlan } from '../../shared/sets/show-set-plan.ts';
import { planSet } from '../../src/sets/plan-set.ts';
import { sheetsOf } from '../../src/sets/sheets-of-set.ts';
import { type JtsFigure, jtsDistance, jtsIntersection, jtsPolygon } from '../support/jts.ts';
import { type At, type Piece, pathsIn, readSvg } from '../support/read-svg.ts';
import { unzip } from './unzip.ts';

/** Nests at once, with their own outlines or by their boxes; the search is kept short. */
const atOnce = (by: 'outlines' | 'boxes') => ({
  run: (input: Parameters<typeof nest>[0]) => {
    const pieces = by === 'outlines' ? input.pieces : input.pieces.map(({ outline: _, ...box }) => box);
    return Promise.resolve(runToEnd(nest({ ...input, pieces, evaluations: 300 })));
  },
});

const card = (figure: object, margin: number) => ({
  style: 'card-base',
  units: 'mm',
  dimensions: { panel: { width: 105, height: 148 } },
  knockouts: [{ kind: 'figure', on: { place: 'front' }, figure, inlay: { margin } }],
});
const made = (style: string, width: number, height: number, more: object = {}) => ({
  make: { style, units: 'mm', dimensions: { panel: { width, height } }, ...more },
});
const inlay = { inlay: { of: 'card', name: 'inlay-1' } };
const diamond = made('envelope', 114, 81, { flaps: 'diagonal' });

/** Filled outlines are drawn whole, so that every one can be read. */
const filled = { layers: { cut: { paint: 'fill' } } };

const piece = fc
  .record({
    kind: fc.constantFrom(
      diamond,
      made('envelope', 90, 60, { flaps: 'diagonal' }),
      made('envelope', 90, 60),
      made('four-flap-wrap', 60, 45),
      made('gate-wallet', 80, 60),
      made('tag', 40, 75),
      inlay,
      { cut: { width: 70, height: 45 } },
    ),
    perKit: fc.integer({ min: 1, max: 4 }),
    turns: fc.constantFrom<object[]>({}, { turns: 'half' }, { turns: 'none' }),
  })
  .map(({ kind, perKit, turns }) => ({ ...kind, perKit, ...turns, paper: 'sheet' }));

const anySet = fc
  .record({
    units: fc.constant('mm'),
    kits: fc.integer({ min: 1, max: 4 }),
    spoilage: fc.constant(0),
    gap: fc.constantFrom(undefined, 0, 2.5),
    cutter: fc.constantFrom(undefined, { width: 318, height: 440, kerf: 0.2, margin: 5 }),
    convention: fc.constantFrom({}, { sheetLies: 'outside-up' }),
    sheet: fc.constantFrom({ size: 'iso-a3' }, { size: 'craft-12x12' }, { width: 320, height: 450 }),
    figure: fc.constantFrom(
      { shape: 'heart', width: 50 },
      { shape: 'circle', diameter: 40 },
      { shape: 'star', points: 5, diameter: 60 },
    ),
    pieces: fc.array(piece, { minLength: 1, maxLength: 4 }),
  })
  .map(({ sheet, figure, pieces, convention, ...set }) => ({
    ...set,
    convention: { ...convention, ...filled },
    papers: [
      { name: 'cards', size: 'iso-a3' },
      { name: 'sheet', ...sheet },
    ],
    pieces: [
      { name: 'card', make: card(figure, 5) },
      ...pieces.map((each, index) => ({ name: `piece ${index}`, ...each })),
    ],
  }));

const alongCurve = (from: At, one: At, other: At, to: At, t: number): At => {
  const u = 1 - t;
  const [a, b, c, d] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
  return {
    x: a * from.x + b * one.x + c * other.x + d * to.x,
    y: a * from.y + b * one.y + c * other.y + d * to.y,
  };
};
const parts = Array.from({ length: 24 }, (_, part) => part / 24);
const points = (stretch: Piece): readonly At[] =>
  stretch.length === 2
    ? [stretch[0]]
    : parts.map((t) => alongCurve(stretch[0], stretch[1], stretch[2], stretch[3], t));

/** The outlines that a sheet's drawing cuts, as jsts has them. */
function outlinesIn(svg: string): readonly { id: string; corners: readonly At[]; figure: JtsFigure }[] {
  const cut = readSvg(svg).groups.find(({ id }) => id === 'cut');
  return (cut ? pathsIn(cut) : []).flatMap(({ id, subpaths }) =>
    subpaths.map(({ pieces }) => {
      const corners = pieces.flatMap(points);
      return { id, corners, figure: jtsPolygon(corners.map(({ x, y }) => ({ x: 1e6 * x, y: 1e6 * y }))) };
    }),
  );
}

/** Everything wrong with where outlines lie, read from the drawings. */
function faultsOf(planned: PlannedSet): readonly string[] {
  const files = new Map(unzip(sheetsOf(planned)).map(({ name, text }) => [name, text]));
  const gap = (planned.set.gap ?? 0) / 1e6;
  const faults: string[] = [];
  for (const { number, placed, area } of sheetsOfSet(planned.papers)) {
    const file = sheetFile(number);
    const { x, y, width, height } = lying(area, liesMirrored(planned.set)).place({
      x: area.left,
      y: area.top,
      width: area.reachWidth,
      height: area.reachHeight,
      turn: 0,
    });
    const [left, top, wide, high] = [x, y, width, height].map((length) => length / 1e6) as [
      number,
      number,
      number,
      number,
    ];
    const within = (value: number, from: number, room: number) =>
      value > from - 0.002 && value < from + room + 0.002;
    const outlines = outlinesIn(files.get(file) ?? '');
    if (outlines.length !== placed.length)
      faults.push(`${file}: ${outlines.length} of ${placed.length} outlines`);
    for (const [index, { id, corners, figure }] of outlines.entries()) {
      if (!corners.every(({ x, y }) => within(x, left, wide) && within(y, top, high)))
        faults.push(`${file}: ${id} leaves the machine’s reach`);
      for (const other of outlines.slice(0, index)) {
        // places are written to 0.001 mm
        if (jtsIntersection(figure, other.figure).getArea() > 0.2)
          faults.push(`${file}: ${id} overlaps ${other.id}`);
        else if (gap > 0 && jtsDistance(figure, other.figure) < gap - 0.003)
          faults.push(`${file}: ${id} is too near to ${other.id}`);
      }
    }
  }
  return faults;
}

const turnsAllowed = { none: [0], half: [0, 180], quarter: [0, 90, 180, 270] };

describe('pieces that are no rectangles', () => {
  test('lie apart on the drawn sheets, within reach, turned as they may, on no more sheets than their boxes', async () => {
    await fc.assert(
      fc.asyncProperty(anySet, async (body) => {
        const set = setSpec.parse(body);
        const planned = await planSet(set, atOnce('outlines'));
        expect(faultsOf(planned)).toEqual([]);
        const { pieces, papers, sheets } = showSetPlan(planned);
        for (const { placed, turned } of papers.flatMap(({ layouts }) => layouts))
          for (const { piece: name, turn } of placed) {
            const own = pieces.find((each) => each.name === name);
            const onMachine = liesMirrored(set) ? 360 - turn : turn;
            expect(turnsAllowed[own?.turns ?? 'none']).toContain((onMachine + (turned ? 270 : 0)) % 360);
          }
        const boxes = showSetPlan(await planSet(set, atOnce('boxes')));
        expect(sheets).toBeLessThanOrEqual(boxes.sheets);
      }),
      { numRuns: 15 },
    );
  });

  const onOneSheet = (size: object, pieces: object[], kits = 12) => ({
    units: 'mm',
    kits,
    spoilage: 0,
    convention: filled,
    papers: [
      { name: 'sheet', ...size },
      { name: 'cards', size: 'iso-a3' },
    ],
    pieces,
  });

  test.each<[string, object, number, number]>([
    // two of 222 × 180 mm do not lie on 304.8 × 304.8 mm as boxes; slid into one another along their edges they do
    [
      'pointed envelopes, two for each of twelve kits',
      onOneSheet({ size: 'craft-12x12' }, [{ name: 'envelope', perKit: 2, ...diamond }]),
      12,
      24,
    ],
    // 88 × 82 mm: three by three, and no fourth row or column, on 304.8 × 304.8 mm
    [
      'a heart inlay for each of twelve kits',
      onOneSheet({ size: 'craft-12x12' }, [
        { name: 'card', paper: 'cards', make: card({ shape: 'heart', width: 76 }, 6) },
        { name: 'heart', ...inlay },
      ]),
      1,
      2,
    ],
  ])('take less paper than their boxes: %s', async (_, body, most, byBoxes) => {
    const set = setSpec.parse(body);
    const planned = await planSet(set, atOnce('outlines'));
    expect(faultsOf(planned)).toEqual([]);
    expect(showSetPlan(planned).papers[0]?.sheets).toBeLessThanOrEqual(most);
    expect(showSetPlan(await planSet(set, atOnce('boxes'))).papers[0]?.sheets).toBe(byBoxes);
  });

  test('share cuts where their straight sides meet, and the plan says so', async () => {
    const set = setSpec.parse(
      onOneSheet({ size: 'iso-a2' }, [{ name: 'envelope', perKit: 4, ...made('envelope', 114, 81) }], 1),
    );
    // two by two, with a gap of 0: a line between each two neighbours
    const { papers, cautions } = showSetPlan(await planSet(set, atOnce('outlines')));
    expect(papers[0]?.layouts.map(({ sharedCuts }) => sharedCuts)).toEqual([4]);
    expect(cautions.join()).toContain('Neighbours share a cut');
    const apart = showSetPlan(await planSet({ ...set, gap: 2e6 }, atOnce('outlines')));
    expect(apart.papers[0]?.layouts.map(({ sharedCuts }) => sharedCuts)).toEqual([0]);
    expect(apart.cautions.join()).not.toContain('Neighbours share a cut');
  });

  test('an outline moved onto another, or out of reach, is seen', async () => {
    const set = setSpec.parse(
      onOneSheet({ size: 'iso-a2' }, [{ name: 'envelope', perKit: 4, ...diamond }], 1),
    );
    const planned = await planSet(set, atOnce('outlines'));
    const moved = (by: number): PlannedSet => ({
      ...planned,
      papers: planned.papers.map((paper) => ({
        ...paper,
        nesting: {
          ...paper.nesting,
          layouts: paper.nesting.layouts.map((layout) => ({
            ...layout,
            placed: layout.placed.map((each, index) => (index === 0 ? { ...each, x: each.x + by } : each)),
          })),
        },
      })),
    });
    expect(faultsOf(moved(0))).toEqual([]);
    expect(faultsOf(moved(20e6)).join()).toMatch(/overlaps/u);
    expect(faultsOf(moved(-20e6)).join()).toMatch(/reach/u);
  });
});
