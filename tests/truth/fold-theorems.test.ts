import { describe, expect, test } from 'vitest';
import { unfold } from '../../shared/creases/unfold.ts';
import { boxOf, type FlatFace, flatFaces } from '../../shared/folding/flat-faces.ts';
import { foldInSteps } from '../../shared/folding/fold-in-steps.ts';
import { vertexFaults } from '../../shared/folding/vertices.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import {
  assignments,
  creaseCount,
  flatStack,
  goodOrders,
  permutations,
  withLetters,
} from '../support/flat-stack.ts';
import {
  faultsByRabbitEar,
  graphOf,
  ordersByRabbitEar,
  pairsIn,
  samePairs,
} from '../support/other-folders.ts';
import { foldOver, oneVertex, square, squareFolds, triangleTwist } from '../support/patterns.ts';

/*
 * Published theorems on flat folding, and small patterns whose every order of layers can be tried. "Counted"
 * values were found by an exhaustive search in an independent program, and again here by rabbit-ear.
 *
 * Kawasaki 1989 and Justin 1986: alternate angles about a flat-folded vertex sum to 180°; Maekawa and Justin:
 * mountains and valleys differ by 2; Hull, "Counting mountain-valley assignments for flat folds" (Ars
 * Combinatoria 67, 2003; arXiv 1410.5022): a vertex of 2n creases has at least 2^n and at most 2·C(2n, n-1).
 */

/** Sectors in degrees, and how many assignments fold flat; counted. */
const vertices: readonly (readonly [readonly number[], number])[] = [
  [[90, 90, 90, 90], 8],
  [[60, 90, 120, 90], 4],
  [[45, 90, 135, 90], 4],
  [[100, 70, 80, 110], 4],
  [[45, 45, 135, 135], 6],
  [[45, 45, 90, 45, 45, 90], 18],
  [[60, 60, 60, 60, 60, 60], 30],
  [[100, 80, 100, 80], 0],
];

const binomial = (n: number, k: number): number => (k === 0 ? 1 : (binomial(n, k - 1) * (n - k + 1)) / k);

describe.each(vertices)('a vertex with sectors %j', (sectors, count) => {
  const pattern = oneVertex(sectors);
  const all = assignments(sectors.length);

  test('breaks Kawasaki and Maekawa exactly where rabbit-ear says so', () => {
    for (const letters of all) {
      const assigned = withLetters(pattern, (crease) => letters[crease] ?? 'V');
      const ours = vertexFaults(assigned).map(({ rule, vertex }) => `${rule} ${vertex}`);
      const { Kawasaki, Maekawa } = faultsByRabbitEar(graphOf(assigned));
      const theirs = [...Kawasaki.map((v) => `Kawasaki ${v}`), ...Maekawa.map((v) => `Maekawa ${v}`)];
      expect(ours, letters.join('')).toEqual(theirs);
    }
  });

  test(`has ${count} assignments that fold flat, the same as rabbit-ear's`, () => {
    const isFlat = (letters: readonly string[]) => {
      const assigned = withLetters(pattern, (crease) => (letters[crease] === 'M' ? 'M' : 'V'));
      return vertexFaults(assigned).length === 0;
    };
    const orders = new Set(goodOrders(pattern).map(({ letters }) => letters));
    const ours = all.filter((letters) => isFlat(letters) && orders.has(letters.join('')));
    const theirs = all.filter((letters) => {
      const assigned = withLetters(pattern, (crease) => letters[crease] ?? 'V');
      return isFlat(letters) && ordersByRabbitEar(graphOf(assigned), 0).length > 0;
    });
    expect(ours.map((letters) => letters.join(''))).toEqual(theirs.map((letters) => letters.join('')));
    expect(ours).toHaveLength(count);
    if (count === 0) return;
    const n = sectors.length / 2;
    expect(count).toBeGreaterThanOrEqual(2 ** n);
    expect(count).toBeLessThanOrEqual(2 * binomial(2 * n, n - 1));
  });
});

test.each([
  [[90, 90, 90, 90], 'VVVM', true],
  [[90, 90, 90, 90], 'VVVV', false],
  [[90, 90, 90, 90], 'VVMM', false],
  [[60, 90, 120, 90], 'VMVV', true],
  [[60, 90, 120, 90], 'MVMM', true],
  [[60, 90, 120, 90], 'VVVM', false], // Maekawa holds; a sector smaller than both its neighbours needs V and M
  [[45, 45, 90, 45, 45, 90], 'VVMMVV', true],
] as const)('sectors %j with letters %s: %s', (sectors, letters, folds) => {
  // listed counter-clockwise with crease i before sector i; oneVertex goes clockwise, so it is read in reverse
  const reversed = sectors.toReversed();
  const turned = [letters[0], ...[...letters].toReversed().slice(0, -1)].join('');
  const flat = goodOrders(oneVertex(reversed)).map((good) => good.letters);
  expect(flat.includes(turned)).toBe(folds);
});

test('an odd number of creases never folds flat', () => {
  // two hems and one diagonal at a corner; a degree-5 vertex
  const [fault] = vertexFaults(oneVertex([45, 45, 90, 90, 90]));
  expect(fault?.rule).toBe('Kawasaki');
  expect(fault?.message).toBe('5 creases meet, an odd number');
});

describe('the triangle twist (Hull 1994)', () => {
  const pattern = triangleTwist();

  test('keeps Kawasaki at its three corners', () => {
    const rules = vertexFaults(pattern).map(({ rule }) => rule);
    expect(rules).toEqual(['Maekawa', 'Maekawa', 'Maekawa']);
  });

  test('has 64 of 512 assignments that keep Maekawa, none of which rabbit-ear can order', () => {
    const passing = assignments(creaseCount(pattern))
      .map((letters) => withLetters(pattern, (crease) => letters[crease] ?? 'V'))
      .filter((assigned) => vertexFaults(assigned).length === 0);
    expect(passing).toHaveLength(64);
    for (const assigned of passing) expect(ordersByRabbitEar(graphOf(assigned), 0)).toEqual([]);
  });

  test('cannot be stacked: each of the 5,040 orders of its 7 faces has a crossing, whatever the letters', () => {
    expect([...permutations(7)]).toHaveLength(5040);
    expect(goodOrders(pattern)).toEqual([]);
  });
});

describe('folds of a square of 12 mm', () => {
  const { corners, hems, across } = squareFolds;
  // hems + corners: counted by trying; a mitred corner: corner, hem, then a fold through both
  const mitre = [
    foldOver([0, 10, 2, 12], [0, 12]),
    foldOver([1, 0, 1, 12], [0, 6]),
    foldOver([0, 11, 12, 11], [6, 12]),
  ];
  const box = (left: number, right: number, top: number, bottom: number) => ({
    left: mm(left),
    right: mm(right),
    top: mm(top),
    bottom: mm(bottom),
  });
  /** Steps; vertices, edges, faces; folded box; orders of the layers that differ where faces overlap. All counted. */
  const cases = [
    [
      'corners, hems and two flaps',
      [...corners, ...hems, across(4), across(8)],
      [20, 32, 13],
      box(1, 11, 4, 8),
      8,
    ],
    ['hems and two flaps', [...hems, across(4), across(8)], [16, 24, 9], box(1, 11, 4, 8), 8],
    [
      'corners, hems and a gate',
      [...corners, ...hems, across(3), across(9)],
      [20, 32, 13],
      box(1, 11, 3, 9),
      1,
    ],
    ['corners and hems', [...corners, ...hems], [12, 18, 7], box(1, 11, 0, 12), 1],
    ['corners, hems and one flap', [...corners, ...hems, across(4)], [16, 25, 10], box(1, 11, 4, 12), 1],
    ['a mitred corner', mitre, [11, 16, 6], box(1, 12, 0, 11), 1],
  ] as const;

  test.each(cases)('%s', (_, steps, counts, folded, orders) => {
    const program = square(steps);
    const pattern = unfold(program);
    expect([pattern.vertices.length, pattern.edges.length, pattern.faces.length]).toEqual(counts);
    expect(vertexFaults(pattern)).toEqual([]);
    const form = foldInSteps(pattern, program).at(-1);
    const root = pattern.faces.findIndex((_, face) => form?.lies[face]?.a === 1 && form.lies[face].d === 1);
    const stack = flatStack(pattern, root);
    const places = (faces: readonly FlatFace[]) =>
      faces.map(({ corners: points }) => points.map(({ x, y }) => [Math.round(x) + 0, Math.round(y) + 0]));
    if (!form) throw new Error('there is no folded form');
    expect(places(stack.facesIn(form.order))).toEqual(places(flatFaces(pattern, form)));
    expect(boxOf(stack.facesIn(form.order).flatMap(({ corners: points }) => points))).toEqual(folded);
    expect(stack.crossingsIn(form.order)).toEqual([]);
    expect(ordersByRabbitEar(graphOf(pattern), root)).toHaveLength(orders);
  });

  test('corners, hems and two flaps: 16 borders, 12 valleys, 4 mountains', () => {
    const { edges } = unfold(square([...corners, ...hems, across(4), across(8)]));
    const count = (wanted: string) => edges.filter(({ letter }) => letter === wanted).length;
    expect([count('B'), count('V'), count('M')]).toEqual([16, 12, 4]);
  });

  test('a flap that is a valley straight across the hems breaks Maekawa at both', () => {
    const pattern = unfold(square([...hems, across(4)]));
    const wrong = withLetters(pattern, () => 'V');
    const places = vertexFaults(wrong).map(({ rule, vertex }) => [rule, wrong.vertices[vertex]]);
    expect(places).toHaveLength(2);
    expect(places).toContainEqual(['Maekawa', { x: mm(1), y: mm(4) }]);
    expect(places).toContainEqual(['Maekawa', { x: mm(11), y: mm(4) }]);
  });

  test.each([
    ['corners and hems', [...corners, ...hems]],
    ['a mitred corner', mitre],
  ])('%s: of all orders, only those of one state pass', (_, steps) => {
    const pattern = unfold(square(steps));
    const letters = pattern.edges.flatMap(({ letter }) => (letter === 'B' ? [] : [letter])).join('');
    const theirs = ordersByRabbitEar(graphOf(pattern), 0);
    expect(theirs).toHaveLength(1);
    const [only = new Map<string, number>()] = theirs;
    const good = goodOrders(pattern).filter((found) => found.letters === letters);
    expect(good.length).toBeGreaterThan(0);
    const stack = flatStack(pattern);
    for (const { order } of good) expect(samePairs(pairsIn(stack.facesIn(order), only), only)).toBe(true);
  });
});
