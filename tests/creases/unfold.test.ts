import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CreasePattern } from '../../shared/creases/crease-pattern.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { graphFaults } from '../../shared/folding/graph-faults.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { foldOver, square } from '../support/patterns.ts';
import { easySleeve, everyKind, foldedFrom, sleeves } from '../support/sleeves.ts';

/** Letter and fold angle of the crease that runs through a point, in millimetres, and the step that made it. */
function creaseAt({ vertices, edges, steps }: CreasePattern, x: number, y: number): string {
  const found = edges.filter(({ ends }) => {
    const [p, q] = [vertices[ends[0]], vertices[ends[1]]];
    if (!p || !q) return false;
    const inBox =
      mm(x) >= Math.min(p.x, q.x) &&
      mm(x) <= Math.max(p.x, q.x) &&
      mm(y) >= Math.min(p.y, q.y) &&
      mm(y) <= Math.max(p.y, q.y);
    return inBox && (q.x - p.x) * (mm(y) - p.y) === (q.y - p.y) * (mm(x) - p.x);
  });
  const [edge] = found;
  if (!edge || found.length > 1) throw new Error(`${found.length} edges run through ${x}, ${y}`);
  return edge.step === undefined ? edge.letter : `${edge.letter} ${edge.foldAngle} ${steps[edge.step]}`;
}

/*
 * By hand, inside face up. A fold toward the viewer is a valley on a layer that lies as on the open sheet, and a
 * mountain on one that lies turned over. The corners are folded first, on the open sheet: V. The hems come next:
 * M turned out, V turned in. By the time of the flaps the hems lie turned over, whichever way they went: V on the
 * panels, M where a flap's fold crosses a hem. At the spine the flaps lie turned over, the panel row does not: V
 * on the panel row, M across both flaps. The hems end before the spine.
 */
describe.each([
  ['out', 'M -180'],
  ['in', 'V 180'],
] as const)('a sleeve of 270 × 320 mm, hems turned %s', (turn, hem) => {
  const { pattern } = foldedFrom({ ...easySleeve, hem: { turn } });

  test('hems bend one way along the whole height', () => {
    for (const y of [45, 150, 250]) {
      expect(creaseAt(pattern, 30, y)).toBe(`${hem} left hem`);
      expect(creaseAt(pattern, 240, y)).toBe(`${hem} right hem`);
    }
  });

  test('flaps are valleys between the hems and mountains across them', () => {
    for (const [y, flap] of [
      [60, 'top flap'],
      [210, 'bottom flap'],
    ] as const) {
      for (const x of [80, 135, 200]) expect(creaseAt(pattern, x, y)).toBe(`V 180 ${flap}`);
      for (const x of [15, 255]) expect(creaseAt(pattern, x, y)).toBe(`M -180 ${flap}`);
    }
  });

  test('the spine is a right angle: valleys on the panel row, mountains across both flaps', () => {
    for (const [x, side] of [
      [130, 'front'],
      [140, 'back'],
    ] as const) {
      expect(creaseAt(pattern, x, 130)).toBe(`V 90 spine at the ${side}`);
      expect(creaseAt(pattern, x, 30)).toBe(`M -90 spine at the ${side}`);
      expect(creaseAt(pattern, x, 260)).toBe(`M -90 spine at the ${side}`);
    }
  });

  test('corners are valleys, from hem score to edge', () => {
    for (const [x, y, name] of [
      [15, 15, 'top left'],
      [255, 15, 'top right'],
      [255, 305, 'bottom right'],
      [15, 305, 'bottom left'],
    ] as const)
      expect(creaseAt(pattern, x, y)).toBe(`V 180 ${name} corner`);
  });

  test('the rest is border', () => {
    for (const [x, y] of [
      [80, 0],
      [15, 0],
      [270, 150],
      [0, 15],
      [135, 320],
    ] as const)
      expect(creaseAt(pattern, x, y)).toBe('B');
    expect(() => creaseAt(pattern, 80, 20)).toThrow('0 edges');
  });
});

test('mitred corners are border, where folded ones are creases', () => {
  const { pattern } = foldedFrom({ ...easySleeve, corners: 'mitred' });
  for (const [x, y] of [
    [15, 15],
    [255, 15],
    [255, 305],
    [15, 305],
  ] as const)
    expect(creaseAt(pattern, x, y)).toBe('B');
  expect(pattern.steps.filter((name) => name.endsWith('corner'))).toEqual([]);
});

test.each([
  // 3 rows × 5 columns and 4 corners; see the figure in the style
  ['folded', { vertices: 28, edges: 46, faces: 19 }],
  ['mitred', { vertices: 24, edges: 38, faces: 15 }],
])('a sleeve with corners %s has %o', (corners, counts) => {
  const { vertices, edges, faces } = foldedFrom({ ...easySleeve, corners }).pattern;
  expect({ vertices: vertices.length, edges: edges.length, faces: faces.length }).toEqual(counts);
  // Euler: V - E + F = 1 for a sheet without holes, the outside not counted
  expect(vertices.length - edges.length + faces.length).toBe(1);
});

test('the faces of any sleeve tile its outline, clockwise as seen', () => {
  const twice = (points: readonly { x: number; y: number }[]): number =>
    points.reduce((sum, p, index) => {
      const q = points[(index + 1) % points.length] ?? p;
      return sum + (p.x / 1e6) * (q.y / 1e6) - (q.x / 1e6) * (p.y / 1e6);
    }, 0);
  fc.assert(
    fc.property(sleeves, (raw) => {
      const { pattern, program } = foldedFrom(raw);
      expect(graphFaults(pattern, program.outline)).toEqual([]);
      const areas = pattern.faces.map(({ vertices }) =>
        twice(vertices.flatMap((vertex) => pattern.vertices[vertex] ?? [])),
      );
      expect(Math.min(...areas)).toBeGreaterThan(0);
      expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(twice(program.outline), 4);
    }),
    { numRuns: 100, seed: 51 },
  );
});

test('every face lies within the panel that it names', () => {
  for (const raw of everyKind) {
    const { pattern, program } = foldedFrom(raw);
    for (const face of pattern.faces) {
      const panel = program.panels.find(({ name }) => name === face.panel);
      for (const { x, y } of face.vertices.flatMap((vertex) => pattern.vertices[vertex] ?? [])) {
        expect(x).toBeGreaterThanOrEqual(panel?.left ?? Number.NaN);
        expect(x).toBeLessThanOrEqual(panel?.right ?? Number.NaN);
        expect(y).toBeGreaterThanOrEqual(panel?.top ?? Number.NaN);
        expect(y).toBeLessThanOrEqual(panel?.bottom ?? Number.NaN);
      }
    }
  }
});

describe('a square of 12 mm', () => {
  test('folded in half twice gets three valleys and a mountain at its middle', () => {
    const pattern = unfold(square([foldOver([6, 0, 6, 12], [0, 6]), foldOver([0, 6, 12, 6], [6, 0])]));
    expect(creaseAt(pattern, 6, 3)).toBe('V 180 fold');
    expect(creaseAt(pattern, 6, 9)).toBe('V 180 fold');
    // the left half lies turned over on the right one by then
    expect(creaseAt(pattern, 9, 6)).toBe('V 180 fold');
    expect(creaseAt(pattern, 3, 6)).toBe('M -180 fold');
  });

  test('folded away, all is the other way', () => {
    const away = { ...foldOver([6, 0, 6, 12], [0, 6]), direction: 'away' } as const;
    const pattern = unfold(square([away, foldOver([0, 6, 12, 6], [6, 0])]));
    expect(creaseAt(pattern, 6, 3)).toBe('M -180 fold');
    expect(creaseAt(pattern, 9, 6)).toBe('V 180 fold');
    expect(creaseAt(pattern, 3, 6)).toBe('M -180 fold');
  });

  test('pleated, the second fold goes through the layer beneath as well', () => {
    // the right third comes over the middle; then a fold through both at its edge's middle
    const pattern = unfold(square([foldOver([8, 0, 8, 12], [12, 6]), foldOver([6, 0, 6, 12], [8, 6])]));
    expect(creaseAt(pattern, 8, 3)).toBe('V 180 fold');
    expect(creaseAt(pattern, 6, 3)).toBe('V 180 fold');
    expect(creaseAt(pattern, 10, 3)).toBe('M -180 fold');
  });

  test('a line that misses the paper, or only touches its edge, leaves no crease', () => {
    const { edges } = unfold(square([foldOver([13, 0, 13, 12], [14, 6]), foldOver([0, 0, 0, 12], [6, 6])]));
    expect(edges.map(({ letter }) => letter)).toEqual(['B', 'B', 'B', 'B']);
  });

  test('a panel must be there for every face', () => {
    expect(() => unfold({ ...square([]), panels: [] })).toThrow('no panel holds the point 6000000, 6000000');
  });
});
