import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { inMm } from '../../shared/lengths/show-length.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { CannotBeFolded } from '../../src/problem/cannot-be-folded.ts';
import { pointsAlong } from '../support/curve-points.ts';
import { areaOfPolygon, drawCutOut, isWithin, polygonsOf } from '../support/cut-out.ts';
import { drawingRules } from '../support/drawing-rules.ts';
import { backToBlank, groupNamed, lengthOf, onBlank, sleeveOf } from '../support/drawn.ts';
import { expectedScores } from '../support/expected-lines.ts';
import { cutOutSpecs } from '../support/knockout-specs.ts';
import { type At, everyGroup, type Piece, pathsIn, piecesOf } from '../support/read-svg.ts';

type CutOut = ReturnType<typeof drawCutOut>;

let drawings: readonly CutOut[];

beforeAll(() => {
  drawings = fc.sample(cutOutSpecs, { numRuns: 120 }).map(drawCutOut);
}, 120_000);

/** Rules of every drawing that do not say where a plain folder's lines are. */
const general = drawingRules.filter(({ name }) =>
  /^(?:no piece has zero|nothing is drawn outside|scores are open|every layer is there|layers come|the drawing and every)/u.test(
    name,
  ),
);

const kerfOf = ({ plan }: CutOut): number => inMm(plan.spec.cutter?.kerf ?? 0);

/** Everything that is drawn, one piece of a path each, in millimetres. */
const allPieces = ({ read }: CutOut): readonly Piece[] => piecesOf(read.groups.flatMap(pathsIn));

/** From a point to a straight line between two others. */
function distance(p: At, from: At, to: At): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((p.x - from.x) * dx + (p.y - from.y) * dy) / square;
  const near = Math.min(1, Math.max(0, share));
  return Math.hypot(p.x - from.x - near * dx, p.y - from.y - near * dy);
}

const chordsOf = (piece: Piece): readonly (readonly [At, At])[] => {
  const points = [...pointsAlong(piece, 64), piece.at(-1) ?? piece[0]];
  return points.slice(1).map((q, index) => [points[index] ?? q, q]);
};

/** Nearer than this, in millimetres, two lines are one: coordinates are rounded to 0.001. */
const NEAR = 0.004;

/** A piece that lies on another, found by points within it: those of another piece are nowhere near unless it is cut twice. */
function liesTwice(pieces: readonly Piece[]): string | undefined {
  const chords = pieces.map(chordsOf);
  const boxes = pieces.map((piece) => ({
    left: Math.min(...piece.map(({ x }) => x)) - NEAR,
    right: Math.max(...piece.map(({ x }) => x)) + NEAR,
    top: Math.min(...piece.map(({ y }) => y)) - NEAR,
    bottom: Math.max(...piece.map(({ y }) => y)) + NEAR,
  }));
  for (const [index, piece] of pieces.entries()) {
    // what is shorter is a corner that was rounded to micrometres
    if (lengthOf(piece) < 0.1) continue;
    const [from, to] = [piece[0], piece.at(-1) ?? piece[0]];
    const inner =
      piece.length === 2
        ? [0.3, 0.5, 0.7].map((t) => ({ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }))
        : [pointsAlong(piece, 10)[3], pointsAlong(piece, 10)[5], pointsAlong(piece, 10)[7]].flatMap(
            (p) => p ?? [],
          );
    for (const [other, beside] of chords.entries()) {
      const box = boxes[other];
      const inBox = ({ x, y }: At) =>
        box !== undefined && x > box.left && x < box.right && y > box.top && y < box.bottom;
      if (other === index || !inner.every(inBox)) continue;
      const near = inner.filter((p) => beside.some(([a, b]) => distance(p, a, b) < NEAR));
      if (near.length === inner.length)
        return `${JSON.stringify(piece)} lies on ${JSON.stringify(pieces[other])}`;
    }
  }
  return undefined;
}

describe('drawings with knockouts', () => {
  it('cover what there is', () => {
    const seen = (has: (drawn: CutOut) => unknown) => drawings.filter(has).length;
    expect(general).toHaveLength(6);
    expect(seen(({ svg }) => svg.includes(' C '))).toBeGreaterThan(60);
    expect(seen(({ folded }) => folded.knockouts?.paper.reshaped)).toBeGreaterThan(20);
    expect(seen(({ svg }) => svg.includes('id="offcut-'))).toBeGreaterThan(5);
    expect(seen(({ svg }) => svg.includes('-part-'))).toBeGreaterThan(20);
    expect(seen(kerfOf)).toBeGreaterThan(10);
    expect(seen(({ folded }) => folded.knockouts?.paper.islands.length)).toBeGreaterThan(3);
  });

  it.each(general)('keep the rule: $name', ({ broken }) => {
    const faults = drawings.flatMap((drawn) => {
      const fault = broken(drawn);
      return fault === undefined ? [] : [`${fault} for ${JSON.stringify(drawn.raw)}`];
    });
    expect(faults.slice(0, 2)).toEqual([]);
  });

  it('hold no line that lies on another', () => {
    const faults = drawings.flatMap((drawn) => {
      const fault = liesTwice(allPieces(drawn));
      return fault === undefined ? [] : [`${fault} for ${JSON.stringify(drawn.raw)}`];
    });
    expect(faults.slice(0, 2)).toEqual([]);
    const piece = drawings.flatMap(allPieces).find((each) => each.length === 4);
    if (!piece) throw new Error('no drawing has a curve');
    expect(liesTwice([piece, piece.toReversed() as unknown as Piece])).toContain('lies on');
  });

  it('have no score where the paper is gone, and all of the others', () => {
    const faults = drawings.flatMap((drawn) => {
      const { convention } = drawn.plan.spec;
      if (kerfOf(drawn) > 0 || convention?.score !== undefined) return [];
      const [holes, cut] = [polygonsOf(drawn, 'knockout'), polygonsOf(drawn, 'cut')];
      const isOutline = drawn.svg.includes('id="outline"');
      const isGone = (p: At) => isWithin(holes, p) || (isOutline ? !isWithin(cut, p) : isWithin(cut, p));
      const scores = (['score-valley', 'score-mountain'] as const).flatMap((id) => onBlank(drawn, id));
      const wanted = expectedScores(sleeveOf(drawn.plan)).flatMap(({ points }) => pointsOn(points));
      return wanted.flatMap((p) => {
        const around = [-0.3, -0.15, 0, 0.15, 0.3].flatMap((d) => [
          { x: p.x + d, y: p.y },
          { x: p.x, y: p.y + d },
        ]);
        const gone = around.map(isGone);
        // beside an opening's edge, or on the sheet's own, nothing is asked
        if (gone.some((each) => each !== gone[0])) return [];
        const scored = scores.some(([from, to]) => distance(p, from, to) < 0.002);
        return scored === gone[0] ? [`${JSON.stringify(p)} for ${JSON.stringify(drawn.raw)}`] : [];
      });
    });
    expect(faults.slice(0, 2)).toEqual([]);
  });

  it('cut what lies within something else before it, and never begin at a corner where there is a straight side', () => {
    for (const drawn of drawings) {
      const outlines = (groupNamed(drawn.read, 'knockout')?.paths ?? []).map(({ subpaths }) =>
        subpaths.map(({ pieces }) => pieces.flatMap((piece) => pointsAlong(piece))),
      );
      for (const [index, polygons] of outlines.entries()) {
        const own = polygons.at(-1) ?? [];
        for (const standing of polygons.slice(0, -1)) {
          const [probe] = standing;
          expect(probe && isWithin([own], probe)).toBe(true);
        }
        for (const later of outlines.slice(index + 1)) {
          const [probe] = later.at(-1) ?? [];
          // an opening within a piece that stands in this one would have come before it
          if (probe)
            expect(polygons.slice(0, -1).some((standing) => isWithin([standing], probe))).toBe(false);
        }
      }
      for (const { subpaths } of groupNamed(drawn.read, 'knockout')?.paths ?? []) {
        for (const { pieces } of subpaths) {
          const lines = pieces.filter((piece) => piece.length === 2);
          const longest = Math.max(0, ...lines.map(lengthOf));
          if (longest < 2.1) continue;
          const [first, last] = [pieces[0], pieces.at(-1)];
          expect(first?.length).toBe(2);
          expect(last?.length).toBe(2);
          // both halves of the side that the cut begins on
          expect(first && last && distance(first[0], last[0], first[1] ?? first[0])).toBeLessThan(0.003);
        }
      }
    }
  });

  it('are the same bytes again, with the members of the spec in another order', () => {
    const backwards = (value: unknown): unknown =>
      Array.isArray(value)
        ? value.map(backwards)
        : typeof value === 'object' && value !== null
          ? Object.fromEntries(
              Object.entries(value)
                .toReversed()
                .map(([key, item]) => [key, backwards(item)]),
            )
          : value;
    for (const drawn of drawings.slice(0, 25))
      expect(drawCutOut(backwards(drawn.raw) as object).svg).toBe(drawn.svg);
  });

  it('are refused for the cutter exactly when a check refuses', () => {
    let [refused, drawnToo] = [0, 0];
    for (const { folded, svg } of drawings.slice(0, 60)) {
      const refuses = folded.knockouts?.findings.some(({ does }) => does === 'refuse');
      if (refuses) {
        expect(() => svgOfFolder(folded.plan.spec)).toThrow(CannotBeFolded);
        refused++;
      } else {
        expect(svgOfFolder(folded.plan.spec)).toBe(svg);
        drawnToo++;
      }
    }
    expect(refused).toBeGreaterThan(5);
    expect(drawnToo).toBeGreaterThan(20);
  });
});

/** Points every few millimetres along straight lines through points, off their ends. */
function pointsOn(points: readonly At[]): readonly At[] {
  return points.slice(1).flatMap((to, index) => {
    const from = points[index] ?? to;
    const count = Math.max(1, Math.floor(Math.hypot(to.x - from.x, to.y - from.y) / 2.3));
    return Array.from({ length: count }, (_, step) => {
      const t = (step + 0.5) / count;
      return { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) };
    });
  });
}

describe('kerf', () => {
  const spec = (kerf: string, more: object = {}) => ({
    style: 'twin-sleeve',
    units: 'mm',
    dimensions: { panel: { width: 90, height: 140 }, spine: 12, hem: 20, topFlap: 60, overlap: 15 },
    stock: { width: 400, height: 400 },
    prefer: 'least-paper',
    cutter: { width: 600, height: 600, kerf },
    knockouts: [
      {
        kind: 'figure',
        on: { place: 'back cover' },
        figure: { shape: 'rounded-rectangle', width: 30, height: 40, corner: 0 },
      },
    ],
    ...more,
  });

  // 2 · 90 + 12 + 2 · 20 = 232 by 2 · 140 + 15 = 295
  it.each([
    ['0 mm', 232 * 295, 30 * 40, 232],
    ['0.2 mm', 232.2 * 295.2, 29.8 * 39.8, 232.2],
    ['1 mm', 233 * 296, 29 * 39, 233],
  ])('%s draws the outline outward and openings inward by half of it', (kerf, outside, inside, width) => {
    const drawn = drawCutOut(spec(kerf));
    const [outline] = polygonsOf(drawn, 'cut');
    const [opening] = polygonsOf(drawn, 'knockout');
    expect(areaOfPolygon(outline ?? [])).toBeCloseTo(outside, 0);
    expect(areaOfPolygon(opening ?? [])).toBeCloseTo(inside, 0);
    expect(drawn.read.width).toBeCloseTo(width, 4);
    const lowest = everyGroup(drawn.read.groups).flatMap(({ paths }) => piecesOf(paths).flat());
    expect(Math.min(...lowest.map(({ x }) => x))).toBeGreaterThan(-0.001);
  });

  it('is made up for without knockouts too, and leaves a whole sheet’s own edges alone', () => {
    const plain = drawCutOut(spec('0.4 mm', { knockouts: undefined }));
    expect(areaOfPolygon(polygonsOf(plain, 'cut')[0] ?? [])).toBeCloseTo(232.4 * 295.4, 0);
    const whole = drawCutOut(spec('0.4 mm', { stock: { width: 232, height: 295 } }));
    expect(whole.read.width).toBe(232);
    expect(polygonsOf(whole, 'cut')).toEqual([]);
    const mitred = drawCutOut(spec('0.4 mm', { stock: { width: 232, height: 295 }, corners: 'mitred' }));
    // the triangles with legs of 20 mm lose 0.2 mm beside their long side: legs of 20 − 0.2·√2
    const leg = 20 - 0.2 * Math.SQRT2;
    for (const triangle of polygonsOf(mitred, 'cut'))
      expect(areaOfPolygon(triangle)).toBeCloseTo(leg ** 2 / 2, 1);
    expect(polygonsOf(mitred, 'cut')).toHaveLength(4);
  });
});

describe('an opening that reaches a sheet’s own edge', () => {
  it('is cut with the outline, or by itself where the sheet’s edges serve', () => {
    const notch = (outline: string) =>
      drawCutOut({
        style: 'twin-sleeve',
        units: 'mm',
        dimensions: { panel: { width: 90, height: 140 }, spine: 12, hem: 20, topFlap: 60, overlap: 15 },
        stock: { width: 232, height: 295 },
        convention: { outline },
        // 20 mm of the hem lie over the cover: a circle on the edge of the hem takes half of itself out of it
        knockouts: [
          {
            kind: 'figure',
            on: { place: 'left hem', anchor: 'left', offset: { left: '10 mm' } },
            figure: { shape: 'circle', diameter: 20 },
            through: { from: 'left hem' },
          },
        ],
      });
    const half = (Math.PI * 10 ** 2) / 2;
    const whole = notch('auto');
    expect(polygonsOf(whole, 'knockout')).toEqual([]);
    expect(polygonsOf(whole, 'cut').map(areaOfPolygon)[0]).toBeCloseTo(half, 0);
    const drawn = notch('always');
    const back = backToBlank(drawn);
    const [outline = []] = polygonsOf(drawn, 'cut');
    expect(areaOfPolygon(outline)).toBeCloseTo(232 * 295 - half, 0);
    // from the top left corner: the panel row begins at 60 and is 140 high, so the notch's middle is at 130
    expect(isWithin([outline], back({ x: 9, y: 130 }))).toBe(false);
    expect(isWithin([outline], back({ x: 11, y: 130 }))).toBe(true);
    expect(isWithin([outline], back({ x: 1, y: 119 }))).toBe(true);
  });
});
