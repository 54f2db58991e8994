import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CreasePattern } from '../../shared/creases/crease-pattern.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { toFold } from '../../shared/fold-format/to-fold.ts';
import { flatFaces } from '../../shared/folding/flat-faces.ts';
import { type FlatForm, foldInSteps } from '../../shared/folding/fold-in-steps.ts';
import type { Folded } from '../../shared/folding/proof-of.ts';
import { vertexFaults } from '../../shared/folding/vertices.ts';
import { flatStack } from '../support/flat-stack.ts';
import {
  faultsByRabbitEar,
  graphOf,
  ordersByRabbitEar,
  type PairOrders,
  pairsIn,
  samePairs,
  verticesByFold,
  verticesByRabbitEar,
} from '../support/other-folders.ts';
import { sleeveSpec } from '../support/sleeve-spec.ts';
import { easySleeve, everyKind, foldedFrom, sleeves, withoutSpine } from '../support/sleeves.ts';

/*
 * Second opinions on how a sheet folds: rabbit-ear 0.9.32 and fold 0.12.0, by other authors. Folding flat leaves
 * out the two folds of 90°, without which the libraries see a sleeve that can be pressed flat.
 */

interface Flat {
  readonly pattern: CreasePattern;
  readonly form: FlatForm;
  /** A face that does not move. */
  readonly root: number;
}

function flatOf({ program }: Folded): Flat {
  const flat = withoutSpine(program);
  const pattern = unfold(flat);
  const form = foldInSteps(pattern, flat).at(-1);
  const root = pattern.faces.findIndex(({ panel }) => panel === 'spine');
  if (!form || root < 0) throw new Error('the sleeve does not fold');
  return { pattern, form, root };
}

/** The largest distance, in millimetres, of our folded corners from a library's folded vertices (y up). */
function distance({ pattern, form }: Flat, coords: readonly (readonly number[])[]): number {
  let most = 0;
  for (const [face, { corners }] of flatFaces(pattern, form).entries()) {
    for (const [index, corner] of corners.entries()) {
      const [x = Number.NaN, y = Number.NaN] = coords[pattern.faces[face]?.vertices[index] ?? -1] ?? [];
      most = Math.max(most, Math.hypot(corner.x / 1e6 - x, -corner.y / 1e6 - y));
    }
  }
  return most;
}

const NEAR = 1e-6; // mm

test('1,000 sleeves fold as rabbit-ear and fold say, and in one of the 8 orders that rabbit-ear finds', () => {
  const seen = { folded: 0, mitred: 0, out: 0, in: 0, tucked: 0, flat: 0 };
  fc.assert(
    fc.property(sleeves, (raw) => {
      const folded = foldedFrom(raw);
      expect(folded.proof.checks.filter(({ holds }) => !holds)).toEqual([]);
      const flat = flatOf(folded);
      const { pattern, form, root } = flat;
      const graph = graphOf(pattern);

      const byFold = verticesByFold(graph, root);
      expect(byFold.residual).toBeLessThanOrEqual(NEAR);
      expect(distance(flat, byFold.coords)).toBeLessThanOrEqual(NEAR);
      expect(distance(flat, verticesByRabbitEar(graph, root))).toBeLessThanOrEqual(NEAR);

      expect(vertexFaults(pattern)).toEqual([]);
      expect(faultsByRabbitEar(graph)).toEqual({ Kawasaki: [], Maekawa: [] });

      const theirs = ordersByRabbitEar(graph, root);
      const faces = flatFaces(pattern, form);
      const same = theirs.filter((order) => samePairs(pairsIn(faces, order), order));
      expect([theirs.length, same.length]).toEqual([8, 1]);

      const { corners = 'folded', hem, seam = 'tucked' } = sleeveSpec(folded.plan);
      seen[corners]++;
      seen[hem?.turn ?? 'out']++;
      seen[seam]++;
    }),
    { numRuns: 1000, seed: 41 },
  );
  // no kind may be missed by chance
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(400);
}, 180_000);

test('our file is folded by rabbit-ear and fold into the flat form that the file itself gives', () => {
  for (const raw of everyKind) {
    const folded = foldedFrom(raw);
    const { file_frames, ...key } = toFold(folded, 'test');
    const [flat] = file_frames;
    if (!flat) throw new Error('the file has no frames');
    const root = key['faces_hemfold:panel'].indexOf('spine');
    const graph = {
      vertices_coords: key.vertices_coords,
      edges_vertices: key.edges_vertices,
      edges_faces: key.edges_faces,
      edges_assignment: flat.edges_assignment,
      edges_foldAngle: flat.edges_foldAngle,
      faces_vertices: key.faces_vertices,
      faces_edges: key.faces_edges,
    };
    const byRabbitEar = verticesByRabbitEar(graph, root);
    const most = flat.vertices_coords.map(([x = Number.NaN, y = Number.NaN], vertex) => {
      const [theirX = Number.NaN, theirY = Number.NaN] = byRabbitEar[vertex] ?? [];
      return Math.hypot(x - theirX, y - theirY);
    });
    expect(Math.max(...most)).toBeLessThanOrEqual(NEAR);
  }
});

test('the distance is large from where nothing is folded, and from a turned sheet', () => {
  const flat = flatOf(foldedFrom(easySleeve));
  const graph = graphOf(flat.pattern);
  expect(distance(flat, graph.vertices_coords)).toBeGreaterThan(100);
  const turned = verticesByRabbitEar(graph, flat.root).map(([x = 0, y = 0]) => [y, x]);
  expect(distance(flat, turned)).toBeGreaterThan(100);
});

test('rabbit-ear finds the same vertices at fault, also in sleeves with wrong letters and moved vertices', () => {
  let faulty = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...everyKind),
      fc.array(fc.nat(45), { maxLength: 4 }),
      fc.option(
        fc.record({
          vertex: fc.nat(27),
          x: fc.integer({ min: 1, max: 5 }),
          y: fc.integer({ min: 1, max: 5 }),
        }),
      ),
      (raw, flips, shift) => {
        const { pattern } = foldedFrom(raw);
        const mutant: CreasePattern = {
          ...pattern,
          vertices: pattern.vertices.map((at, vertex) =>
            shift?.vertex === vertex ? { x: at.x + shift.x * 1e6, y: at.y + shift.y * 1e6 } : at,
          ),
          edges: pattern.edges.map((edge, index) => {
            if (edge.letter === 'B' || !flips.includes(index)) return edge;
            return { ...edge, letter: edge.letter === 'V' ? 'M' : 'V', foldAngle: -edge.foldAngle };
          }),
        };
        const faults = vertexFaults(mutant);
        const ours = (wanted: string) =>
          faults.filter(({ rule }) => rule === wanted).map(({ vertex }) => vertex);
        expect({ Kawasaki: ours('Kawasaki'), Maekawa: ours('Maekawa') }).toEqual(
          faultsByRabbitEar(graphOf(mutant)),
        );
        if (faults.length > 0) faulty++;
      },
    ),
    { numRuns: 400, seed: 43 },
  );
  expect(faulty).toBeGreaterThan(100);
});

describe.each(everyKind)('layers: corners $corners, hems $hem.turn, seam $seam', (raw) => {
  const flat = flatOf(foldedFrom(raw));
  const stack = flatStack(flat.pattern, flat.root);
  const theirs = () => ordersByRabbitEar(graphOf(flat.pattern), flat.root);

  test('each of the 8 orders passes our rules', () => {
    const all = theirs();
    expect(all).toHaveLength(8);
    for (const order of all)
      expect(stack.crossingsIn(stackedBy(order, flat.pattern.faces.length))).toEqual([]);
  });

  test('our rules accept an order exactly when it is one of the 8', () => {
    const all = theirs();
    let [good, bad] = [0, 0];
    fc.assert(
      fc.property(shuffles(flat.form.order), (order) => {
        const listed = all.some((each) => samePairs(pairsIn(stack.facesIn(order), each), each));
        listed ? good++ : bad++;
        expect(stack.crossingsIn(order).length === 0).toBe(listed);
      }),
      { numRuns: 600, seed: 42 },
    );
    expect(Math.min(good, bad)).toBeGreaterThan(20);
  });
});

/** Orders near and far from a good one: a few moves of one face to another place, or all at random. */
function shuffles(order: readonly number[]): fc.Arbitrary<readonly number[]> {
  const place = fc.nat(order.length - 1);
  const moved = fc.array(fc.tuple(place, place), { maxLength: 3 }).map((moves) =>
    moves.reduce((before, [from, to]) => {
      const after = before.toSpliced(from, 1);
      return after.toSpliced(to, 0, before[from] ?? 0);
    }, order),
  );
  return fc.oneof(
    { weight: 5, arbitrary: moved },
    { weight: 1, arbitrary: fc.shuffledSubarray([...order], { minLength: order.length }) },
  );
}

/** Faces from the lowest up in agreement with the orders of pairs. */
function stackedBy(pairs: PairOrders, count: number): readonly number[] {
  const above = new Map<number, Set<number>>();
  for (const [key, order] of pairs) {
    const [f = 0, g = 0] = key.split(' ').map(Number);
    const [high, low] = order === 1 ? [f, g] : [g, f];
    above.set(high, (above.get(high) ?? new Set()).add(low));
  }
  const order: number[] = [];
  while (order.length < count) {
    const next = Array.from({ length: count }, (_, face) => face).find(
      (face) => !order.includes(face) && [...(above.get(face) ?? [])].every((low) => order.includes(low)),
    );
    if (next === undefined) throw new Error('the layers go round in a circle');
    order.push(next);
  }
  return order;
}
