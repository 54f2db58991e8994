import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawCutOut, isWithin, polygonsOf } from '../support/cut-out.ts';
import { sleeveOf } from '../support/drawn.ts';
import { blankOf, type Sleeve } from '../support/expected-lines.ts';
import { layersAt, type SleeveLayer, seenAt } from '../support/folded-sleeve.ts';
import { rasterOf } from '../support/raster.ts';
import type { At } from '../support/read-svg.ts';

/*
 * A figure is designed on the finished folder; here the drawing is read back by an independent reader and the sheet
 * is folded by hand. Wherever the figure is, the paper must be gone in the layers that were to be cut, and nowhere
 * else. Where the figure is follows from its measures by school geometry.
 */

/** A place as the design of the twin sleeve has it, on the flat form, in millimetres. */
interface PlaceByHand {
  readonly side: 'outside' | 'inside';
  readonly left: number;
  readonly right: number;
}

const placesByHand = {
  'front cover': ({ hem: h, width: W }: Sleeve): PlaceByHand => ({ side: 'outside', left: h, right: h + W }),
  'back cover': ({ hem: h, width: W, spine: S }: Sleeve): PlaceByHand => ({
    side: 'outside',
    left: h + W + S,
    right: h + 2 * W + S,
  }),
  spine: ({ hem: h, width: W, spine: S }: Sleeve): PlaceByHand => ({
    side: 'outside',
    left: h + W,
    right: h + W + S,
  }),
  outside: ({ hem: h, width: W, spine: S }: Sleeve): PlaceByHand => ({
    side: 'outside',
    left: h,
    right: h + 2 * W + S,
  }),
  'front pocket': ({ hem: h, width: W }: Sleeve): PlaceByHand => ({ side: 'inside', left: h, right: h + W }),
} as const;
type PlaceName = keyof typeof placesByHand;

/** A figure by hand: an ellipse or a rectangle with sharp corners, turned about its middle. */
interface FigureByHand {
  readonly kind: 'ellipse' | 'rectangle';
  readonly width: number;
  readonly height: number;
  readonly turn: number;
}

/** Half of the width and height of the upright box around a turned figure. */
function halfBox({ kind, width, height, turn }: FigureByHand): At {
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle))];
  return kind === 'rectangle'
    ? { x: (width * cos + height * sin) / 2, y: (width * sin + height * cos) / 2 }
    : { x: Math.hypot(width * cos, height * sin) / 2, y: Math.hypot(width * sin, height * cos) / 2 };
}

/** Whether a point beside the figure's middle lies in it; turned clockwise, as y runs down. */
function isInFigure({ kind, width, height, turn }: FigureByHand, { x, y }: At): boolean {
  const angle = (turn * Math.PI) / 180;
  const [u, v] = [x * Math.cos(angle) + y * Math.sin(angle), y * Math.cos(angle) - x * Math.sin(angle)];
  return kind === 'rectangle'
    ? Math.abs(u) < width / 2 && Math.abs(v) < height / 2
    : (2 * u) ** 2 / width ** 2 + (2 * v) ** 2 / height ** 2 < 1;
}

interface Case {
  readonly raw: object;
  readonly place: PlaceName;
  readonly figure: FigureByHand;
  readonly anchor: readonly [across: number, along: number];
  readonly offset: At;
  readonly through: 'every-layer' | 'seen-layer';
}

/** Where the figure's middle lies on the flat form. */
function middleOf({ place, figure, anchor, offset }: Case, sleeve: Sleeve): At {
  const { side, left, right } = placesByHand[place](sleeve);
  const half = halfBox(figure);
  const x = half.x + anchor[0] * (right - left - 2 * half.x) + offset.x;
  const y = half.y + anchor[1] * (sleeve.height - 2 * half.y) + offset.y;
  return { x: side === 'inside' ? left + x : right - x, y: sleeve.topFlap + y };
}

/** Whether the paper of a layer should be gone. */
function shouldBeOpen(
  layer: SleeveLayer,
  q: At,
  layers: readonly SleeveLayer[],
  one: Case,
  sleeve: Sleeve,
): boolean {
  const { side } = placesByHand[one.place](sleeve);
  const middle = middleOf(one, sleeve);
  const beside = { x: (q.x - middle.x) * (side === 'inside' ? 1 : -1), y: q.y - middle.y };
  if (!isInFigure(one.figure, beside)) return false;
  return one.through === 'every-layer' || seenAt(layers, side, sleeve) === layer;
}

/** Nearer than this to where it changes, in millimetres, a point is not asked: curves, rounding, crumbs. */
const CLEAR = 0.25;
const around = [
  [0, 0],
  [CLEAR, 0],
  [-CLEAR, 0],
  [0, CLEAR],
  [0, -CLEAR],
  [CLEAR, CLEAR],
  [-CLEAR, -CLEAR],
  [CLEAR, -CLEAR],
  [-CLEAR, CLEAR],
] as const;

/** What is wrong with a drawing, from points all over the flat form; also how many were asked and how many open. */
function faultsIn(one: Case): {
  readonly faults: readonly string[];
  readonly asked: number;
  readonly open: number;
} {
  const drawn = drawCutOut(one.raw);
  const sleeve = sleeveOf(drawn.plan);
  const [holes, outline] = [polygonsOf(drawn, 'knockout'), polygonsOf(drawn, 'cut')];
  const isOpen = (p: At): boolean => isWithin(holes, p) || !isWithin(outline, p);
  const { width } = blankOf(sleeve);
  const faults: string[] = [];
  let [asked, open] = [0, 0];
  const [columns, rows] = [60, 48];
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j < rows; j++) {
      const q = {
        x: sleeve.hem + ((i + 0.37) / columns) * (width - 2 * sleeve.hem),
        y: sleeve.topFlap + ((j + 0.41) / rows) * sleeve.height,
      };
      for (const layer of layersAt(sleeve, q)) {
        const wanted = around.map(([dx, dy]) => {
          const near = { x: q.x + dx, y: q.y + dy };
          const layers = layersAt(sleeve, near);
          const same = layers.find(
            ({ row, column, corner }) =>
              row === layer.row && column === layer.column && corner === layer.corner,
          );
          return same && shouldBeOpen(same, near, layers, one, sleeve);
        });
        const [first] = wanted;
        if (first === undefined || wanted.some((each) => each !== first)) continue;
        asked++;
        if (first) open++;
        // what a figure near the border parts from the sheet is gone too, and a plan tells of it
        if (!first && drawn.folded.knockouts?.paper.severed.length !== 0) continue;
        if (isOpen(layer.at) !== first)
          faults.push(
            `${first ? 'not cut' : 'cut'} at ${layer.row}, ${layer.column} ${layer.at.x}, ${layer.at.y}`,
          );
      }
    }
  }
  return { faults, asked, open };
}

const mm = (value: number): string => `${value.toFixed(2)} mm`;

const anchorNames = {
  '0,0': 'top left',
  '0.5,0': 'top',
  '1,0': 'top right',
  '0,0.5': 'left',
  '0.5,0.5': 'centre',
  '1,0.5': 'right',
  '0,1': 'bottom left',
  '0.5,1': 'bottom',
  '1,1': 'bottom right',
} as const;
const anchors = Object.keys(anchorNames) as (keyof typeof anchorNames)[];

const cases: fc.Arbitrary<Case> = fc
  .record({
    panel: fc.tuple(fc.integer({ min: 60, max: 110 }), fc.integer({ min: 80, max: 150 })),
    spine: fc.integer({ min: 4, max: 20 }),
    hem: fc.integer({ min: 12, max: 40 }),
    topFlap: fc.integer({ min: 42, max: 60 }),
    overlap: fc.integer({ min: 12, max: 30 }),
    turn: fc.constantFrom('in', 'out'),
    corners: fc.constantFrom('folded', 'mitred'),
    sheetLies: fc.constantFrom('inside-up', 'outside-up'),
    userUnit: fc.constantFrom('mm', '1/96 in', '1/72 in'),
    place: fc.constantFrom<PlaceName>('front cover', 'back cover', 'spine', 'outside', 'front pocket'),
    kind: fc.constantFrom<FigureByHand['kind']>('ellipse', 'rectangle'),
    size: fc.tuple(fc.integer({ min: 8, max: 60 }), fc.integer({ min: 8, max: 60 })),
    turned: fc.constantFrom(0, 90, -45, 15, 200, 333),
    anchor: fc.constantFrom(...anchors),
    offset: fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: -20, max: 20 })),
    through: fc.constantFrom<Case['through']>('every-layer', 'seen-layer'),
  })
  .map(({ panel, size, ...rest }) => {
    const [width, height] = size;
    const [x, y] = rest.offset;
    const [across = 0.5, along = 0.5] = rest.anchor.split(',').map(Number);
    const raw = {
      style: 'twin-sleeve',
      units: 'mm',
      dimensions: {
        panel: { width: panel[0], height: panel[1] },
        spine: rest.spine,
        // a corner must not reach the bottom flap's score
        hem: Math.min(rest.hem, panel[1] + rest.overlap - rest.topFlap),
        topFlap: rest.topFlap,
        overlap: rest.overlap,
      },
      hem: { turn: rest.turn },
      corners: rest.corners,
      // which flap's hem is seen where flaps are tucked is the program's own affair
      seam: 'flat',
      stock: { width: 700, height: 700 },
      prefer: 'least-paper',
      convention: { outline: 'always', sheetLies: rest.sheetLies, userUnit: rest.userUnit },
      knockouts: [
        {
          kind: 'figure',
          on: {
            place: rest.place,
            anchor: anchorNames[rest.anchor],
            offset: {
              ...(x < 0 ? { left: mm(-x) } : { right: mm(x) }),
              ...(y < 0 ? { up: mm(-y) } : { down: mm(y) }),
            },
          },
          figure:
            rest.kind === 'ellipse'
              ? { shape: 'oval', width, height }
              : { shape: 'rounded-rectangle', width, height, corner: 0 },
          turn: rest.turned,
          through: rest.through,
        },
      ],
    };
    return {
      raw,
      place: rest.place,
      figure: { kind: rest.kind, width, height, turn: rest.turned },
      anchor: [across, along],
      offset: { x, y },
      through: rest.through,
    } satisfies Case;
  });

describe('a drawing with a knockout, folded back by hand', () => {
  it('is open wherever the figure is, in the layers that were to be cut, and nowhere else', () => {
    let [asked, open] = [0, 0];
    fc.assert(
      fc.property(cases, (one) => {
        const found = faultsIn(one);
        asked += found.asked;
        open += found.open;
        expect(found.faults.slice(0, 3)).toEqual([]);
      }),
      { numRuns: 60 },
    );
    expect(asked).toBeGreaterThan(100_000);
    expect(open).toBeGreaterThan(3000);
  }, 120_000);

  it('is caught when the figure lies half a millimetre off, mirrored, or in another layer', () => {
    const [right] = fc.sample(
      cases.filter(
        ({ figure, place, through }) =>
          place === 'front cover' &&
          figure.kind === 'rectangle' &&
          figure.turn === 15 &&
          figure.width !== figure.height &&
          through === 'every-layer',
      ),
      { numRuns: 1, seed: 7 },
    );
    if (!right) throw new Error('there is no such case');
    expect(faultsIn(right).faults).toEqual([]);
    const wrong: readonly Case[] = [
      { ...right, offset: { ...right.offset, x: right.offset.x + 1 } },
      { ...right, figure: { ...right.figure, turn: -right.figure.turn } },
      { ...right, through: 'seen-layer' },
    ];
    for (const one of wrong) expect(faultsIn(one).faults.length).toBeGreaterThan(0);
  });

  it('is painted there by an independent renderer, through curves, counters and fill', () => {
    const off = { off: true };
    // a turned oval on the spine and the back cover, over their score, where both flaps lie behind
    const one: Case = {
      raw: {
        style: 'twin-sleeve',
        units: 'mm',
        dimensions: { panel: { width: 100, height: 140 }, spine: 14, hem: 20, topFlap: 70, overlap: 20 },
        seam: 'flat',
        stock: { width: 400, height: 400 },
        prefer: 'least-paper',
        knockouts: [
          {
            kind: 'figure',
            on: { place: 'outside', offset: { left: 12 } },
            figure: { shape: 'oval', width: 60, height: 36 },
            turn: 25,
            through: 'every-layer',
          },
        ],
      },
      place: 'outside',
      figure: { kind: 'ellipse', width: 60, height: 36, turn: 25 },
      anchor: [0.5, 0.5],
      offset: { x: -12, y: 0 },
      through: 'every-layer',
    };
    const filled = {
      ...one.raw,
      convention: {
        outline: 'always',
        layers: { score: off, cut: off, knockout: { paint: 'fill', colour: '#000000' } },
      },
    };
    const drawn = drawCutOut(filled);
    const sleeve = sleeveOf(drawn.plan);
    const { painted } = rasterOf(drawn.svg, 254);
    const outline = polygonsOf(drawCutOut({ ...one.raw, convention: { outline: 'always' } }), 'cut');
    let [open, shut] = [0, 0];
    for (let i = 0; i < 90; i++) {
      for (let j = 0; j < 70; j++) {
        const q = {
          x: sleeve.hem + ((i + 0.3) / 90) * (2 * sleeve.width + sleeve.spine),
          y: sleeve.topFlap + ((j + 0.3) / 70) * sleeve.height,
        };
        const layers = layersAt(sleeve, q);
        for (const layer of layers) {
          const near = around.map(([dx, dy]) => ({ x: q.x + dx, y: q.y + dy }));
          const wanted = near.map((each) => shouldBeOpen(layer, each, layers, one, sleeve));
          // at the border it is the outline that changes
          if (wanted.some((each) => each !== wanted[0]) || !isWithin(outline, layer.at)) continue;
          // 254 dpi are 10 pixels to a millimetre
          const black = painted(Math.floor(layer.at.x * 10), Math.floor(layer.at.y * 10)) > 0.5;
          expect(black).toBe(wanted[0]);
          if (black) open++;
          else shut++;
        }
      }
    }
    expect(open).toBeGreaterThan(300);
    expect(shut).toBeGreaterThan(300);
  });
});
