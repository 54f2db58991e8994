import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Spot, spotsOf } from '../../shared/folding/spots.ts';
import { flatStack } from '../support/flat-stack.ts';
import { oneVertex } from '../support/patterns.ts';
import { sleeveSpec } from '../support/sleeve-spec.ts';
import { easySleeve, everyKind, foldedFrom, sleeves } from '../support/sleeves.ts';

const areaOf = (spots: readonly Spot[]): number => spots.reduce((sum, { area }) => sum + area, 0);
const paperIn = (spots: readonly Spot[]): number =>
  spots.reduce((sum, { area, stack }) => sum + area * stack.length, 0);

/** Layers at a point, in millimetres, by the spot nearest to it in the cell that holds it. */
function layersAt(spots: readonly Spot[], x: number, y: number): readonly string[] {
  const [nearest] = spots.toSorted(
    (one, other) =>
      Math.hypot(one.x / 1e6 - x, one.y / 1e6 - y) - Math.hypot(other.x / 1e6 - x, other.y / 1e6 - y),
  );
  return (nearest?.stack ?? []).map(({ panel }) => panel);
}

/*
 * The sleeve lies at x 30 … 240, y 60 … 210 mm. Over the front panel (x 30 … 130) the top flap reaches from 60
 * to 120 and the bottom flap from 100 to 210. The left hem reaches from 30 to 60; the hem of the top flap lacks
 * its corner beyond the line x + y = 150, the hem of the bottom flap its corner beyond y = x + 70, and the corner
 * that was folded in lies on the other side of the same line, up to y = 90 and y = 130.
 */
describe('layers of the easy sleeve, counted by hand', () => {
  const points = [
    // x, y, layers with folded corners, with mitred ones
    [90, 80, 2, 2], // front, top flap
    [90, 110, 3, 3], // and bottom flap
    [90, 160, 2, 2],
    [135, 110, 3, 3], // spine
    [45, 80, 4, 4], // front and top flap, each with its hem
    [35, 97, 5, 4], // and the top flap's corner
    [33, 110, 8, 6], // front, both flaps, three hems, both corners
    [57, 110, 4, 4], // front with its hem, both flaps; their hems lack their corners there
    [45, 180, 4, 4],
    [35, 125, 5, 4], // front and bottom flap, each with its hem, and the bottom flap's corner
  ] as const;

  test.each(points)('at %d, %d: %d folded, %d mitred', (x, y, folded, mitred) => {
    for (const raw of everyKind) {
      const { plan, proof } = foldedFrom(raw);
      const expected = sleeveSpec(plan).corners === 'mitred' ? mitred : folded;
      expect(layersAt(proof.spots, x, y)).toHaveLength(expected);
      // the right end is the mirror image
      expect(layersAt(proof.spots, 270 - x, y)).toHaveLength(expected);
    }
  });

  test('by name, from the lowest up', () => {
    const { spots } = foldedFrom(easySleeve).proof;
    expect(layersAt(spots, 90, 110)).toEqual(['front', 'top flap, front', 'bottom flap, front']);
    expect(layersAt(spots, 45, 80)).toEqual(['left hem', 'front', 'top flap, front', 'top flap, left hem']);
  });
});

test('together the spots cover the folded outline once', () => {
  fc.assert(
    fc.property(sleeves, (raw) => {
      const { plan, proof } = foldedFrom(raw);
      const { 'panel.width': width = 0, 'panel.height': height = 0, spine = 0 } = plan.dimensions;
      const outline = ((2 * width + spine) / 1e6) * (height / 1e6);
      // less what is lost where two of the form's lines lie within a micrometre of each other
      expect(areaOf(proof.spots)).toBeGreaterThan(outline * 0.9999);
      expect(areaOf(proof.spots)).toBeLessThan(outline * 1.0001);
    }),
    { numRuns: 100, seed: 52 },
  );
});

test('layer by layer, the spots hold all of the paper; corners at 45° by cells, hence within 2 %', () => {
  for (const raw of everyKind) {
    const { plan, proof } = foldedFrom(raw);
    const corners = sleeveSpec(plan).corners === 'mitred' ? (4 * (30 * 30)) / 2 : 0;
    const blank = 270 * 320 - corners;
    expect(Math.abs(paperIn(proof.spots) / blank - 1)).toBeLessThan(0.02);
  }
});

test('a face of any shape is found where it is, and nothing where there is none', () => {
  // four right-angled triangles, unfolded, make a square on its tip: half of the cells hold paper
  const pattern = oneVertex([90, 90, 90, 90]);
  const open = { ...pattern, edges: pattern.edges.map((edge) => ({ ...edge, foldAngle: 0 })) };
  const spots = spotsOf(flatStack(open).facesIn([0, 1, 2, 3]));
  expect(areaOf(spots)).toBeCloseTo((200 * 200) / 2, 6);
  expect(new Set(spots.map(({ stack }) => stack.length))).toEqual(new Set([1]));
});

test('each spot lies in its cell', () => {
  const { spots } = foldedFrom(easySleeve).proof;
  for (const { x, left, right } of spots) {
    expect(x).toBeGreaterThan(left);
    expect(x).toBeLessThan(right);
  }
});
