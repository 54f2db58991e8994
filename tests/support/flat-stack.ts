import type { CreasePattern } from '../../shared/creases/crease-pattern.ts';
import { type Crossing, crossings } from '../../shared/folding/crossings.ts';
import { facesAcross } from '../../shared/folding/faces-across.ts';
import { type FlatFace, flatFaces } from '../../shared/folding/flat-faces.ts';
import { jointsOf } from '../../shared/folding/joints.ts';
import { compose, type Isometry, identity, reflection } from '../../shared/geometry/plane.ts';

/** A pattern folded flat, whose layers can be put in any order. */
export interface FlatStack {
  readonly lies: readonly Isometry[];
  /** @param order faces from the lowest layer up */
  facesIn(order: readonly number[]): readonly FlatFace[];
  crossingsIn(order: readonly number[]): readonly Crossing[];
}

/** Folds a pattern flat from its creases alone: each face is mirrored over the creases on the way to it. */
export function flatStack(pattern: CreasePattern, root = 0): FlatStack {
  const neighbours = facesAcross(pattern);
  const found = new Map<number, Isometry>([[root, identity]]);
  for (const [face, motion] of found) {
    for (const { other, from, to, edge } of neighbours[face] ?? []) {
      const [p, q] = [pattern.vertices[from], pattern.vertices[to]];
      if (found.has(other) || !p || !q) continue;
      found.set(
        other,
        Math.abs(edge.foldAngle) === 180 ? compose(motion, reflection({ from: p, to: q })) : motion,
      );
    }
  }
  const lies = pattern.faces.map((_, face) => found.get(face) ?? identity);
  const facesIn = (order: readonly number[]) => flatFaces(pattern, { lies, order });
  return {
    lies,
    facesIn,
    crossingsIn: (order) => {
      const faces = facesIn(order);
      return crossings(jointsOf(pattern, neighbours, faces), faces);
    },
  };
}

/** Every order of the numbers below `count`; each is only good until the next is asked for (Heap 1963). */
export function* permutations(count: number): Generator<readonly number[]> {
  const order = Array.from({ length: count }, (_, index) => index);
  const turns: number[] = order.map(() => 0);
  yield order;
  for (let at = 1; at < count; ) {
    const done = turns[at] ?? 0;
    if (done >= at) {
      turns[at++] = 0;
      continue;
    }
    const with_ = at % 2 === 0 ? 0 : done;
    [order[at], order[with_]] = [order[with_] ?? 0, order[at] ?? 0];
    turns[at] = done + 1;
    at = 1;
    yield order;
  }
}

/** The letters in this pattern's edges replaced; `undefined` keeps the border. */
export const withLetters = (
  pattern: CreasePattern,
  letterOf: (crease: number) => 'M' | 'V',
): CreasePattern => {
  let crease = 0;
  return {
    ...pattern,
    edges: pattern.edges.map((edge) => {
      if (edge.letter === 'B') return edge;
      const letter = letterOf(crease++);
      return { ...edge, letter, foldAngle: letter === 'V' ? 180 : -180 };
    }),
  };
};

export const creaseCount = ({ edges }: CreasePattern): number =>
  edges.filter(({ letter }) => letter !== 'B').length;

/** Every choice of letters for a number of creases. */
export const assignments = (count: number): readonly (readonly ('M' | 'V')[])[] =>
  Array.from({ length: 2 ** count }, (_, bits) =>
    Array.from({ length: count }, (_, crease) => ((bits >> crease) & 1 ? 'M' : 'V')),
  );

/** An order of the layers in which none crosses another, and the letters of the creases that it asks for. */
export interface GoodOrder {
  readonly letters: string;
  readonly order: readonly number[];
}

/** Every order of the layers without crossings, whatever the pattern's own letters, by trying all of them. */
export function goodOrders(pattern: CreasePattern): readonly GoodOrder[] {
  const allValley = withLetters(pattern, () => 'V');
  const stack = flatStack(allValley);
  const across = facesAcross(allValley);
  const joined = allValley.edges
    .filter(({ letter }) => letter !== 'B')
    .map((crease) =>
      across.flatMap((sides, one) =>
        sides.flatMap(({ edge, other }) => (edge === crease && one < other ? [`${one} ${other}`] : [])),
      ),
    );
  const found: GoodOrder[] = [];
  for (const order of permutations(pattern.faces.length)) {
    const faults = stack.crossingsIn(order);
    if (faults.some(({ rule }) => rule !== 'letter')) continue;
    const against = new Set(faults.map(({ faces }) => faces.join(' ')));
    const letters = joined.map(([pair = '']) => (against.has(pair) ? 'M' : 'V')).join('');
    found.push({ letters, order: [...order] });
  }
  return found;
}
