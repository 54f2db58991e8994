import type { FlatFace } from '../folding/flat-faces.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { Side } from '../folding/regions.ts';
import type { Spot } from '../folding/spots.ts';
import { styleOf } from '../styles/registry.ts';

/** A part of the piece that stays flat when it is set up, with what people call it. */
export interface NamedLeaf {
  readonly name: string;
  /** The side of the flat form from which the panel that it is called after is seen, with its outside face if it can be. */
  readonly shownFrom: Side;
  /** Which face of the paper it shows from there. */
  readonly shows: Side;
  readonly panels: ReadonlySet<string>;
  readonly own: ReadonlySet<number>;
  /** Its own faces, and those of leaves that lie beside it in the flat form: not of any that lies over or under it. */
  readonly faces: ReadonlySet<number>;
  /** With its own layers alone: others are elsewhere when the piece is set up. */
  readonly spots: readonly Spot[];
}

/** Panels of nearly the largest size in a leaf are what the leaf is called after, as front and back of a card. */
const nearlyLargest = 0.95;

export const opposite = (side: Side): Side => (side === 'outside' ? 'inside' : 'outside');

/** Every leaf: the one with the style's face panel first, then the larger ones first. */
export function namedLeaves(folded: Folded): readonly NamedLeaf[] {
  const { faces, leaves, spots } = folded.proof;
  const { face } = styleOf(folded.plan.spec);
  const onEachOther = leavesOnEachOther(folded);
  const found = [...new Set(leaves)].map((leaf) => {
    const own = faces.filter(({ index }) => leaves[index] === leaf);
    const beside = faces.filter(({ index }) => !onEachOther.has(`${leaf} ${leaves[index]}`));
    const indices = indicesOf(own);
    const ownSpots = spots.flatMap((spot) => {
      const stack = spot.stack.filter(({ index }) => indices.has(index));
      return stack.length === 0 ? [] : [{ ...spot, stack }];
    });
    const panels = new Set(own.map(({ panel }) => panel));
    const main = mainPanel(panels, folded);
    // a leaf that lies turned over in the flat form turns its outside face to who looks from inside
    const outward: Side = own.some(({ panel, turned }) => panel === main && turned) ? 'inside' : 'outside';
    const isShown = panelsSeen(ownSpots, outward).has(main);
    const shows: Side = isShown ? 'outside' : 'inside';
    return {
      main,
      label: folded.program.panels.find(({ name }) => name === main)?.label ?? main,
      area: ownSpots.reduce((sum, { area }) => sum + area, 0),
      shownFrom: isShown ? outward : opposite(outward),
      shows,
      panels,
      own: indices,
      faces: indicesOf(beside),
      spots: ownSpots,
    };
  });
  const rank = (leaf: (typeof found)[number]) => (leaf.panels.has(face) ? Infinity : Math.round(leaf.area));
  return found
    .map((leaf) => {
      const isUnique = found.filter(({ label }) => label === leaf.label).length === 1;
      return { ...leaf, name: isUnique ? leaf.label : leaf.main };
    })
    .toSorted((one, other) => (rank(other) > rank(one) ? 1 : rank(other) < rank(one) ? -1 : 0));
}

const indicesOf = (faces: readonly FlatFace[]): ReadonlySet<number> =>
  new Set(faces.map(({ index }) => index));

/** Pairs of different leaves of which one lies over the other somewhere in the flat form. */
function leavesOnEachOther({ proof: { leaves, spots } }: Folded): ReadonlySet<string> {
  const pairs = new Set<string>();
  for (const { stack } of spots) {
    const there = new Set(stack.map(({ index }) => leaves[index]));
    for (const one of there) for (const other of there) if (one !== other) pairs.add(`${one} ${other}`);
  }
  return pairs;
}

/** The panel that a leaf is called after: the first of its largest. */
function mainPanel(panels: ReadonlySet<string>, { program }: Folded): string {
  const sizes = program.panels
    .filter(({ name }) => panels.has(name))
    .map(({ name, left, right, top, bottom }) => ({ name, area: (right - left) * (bottom - top) }));
  const largest = Math.max(...sizes.map(({ area }) => area));
  return sizes.find(({ area }) => area >= nearlyLargest * largest)?.name ?? '';
}

/** What is seen of each panel, the panel nearest to the viewer at each spot. */
export function panelsSeen(spots: readonly Spot[], side: Side): ReadonlyMap<string, readonly Spot[]> {
  const seen = new Map<string, Spot[]>();
  for (const spot of spots) {
    const panel = (side === 'inside' ? spot.stack.at(-1) : spot.stack[0])?.panel;
    if (panel === undefined) continue;
    const known = seen.get(panel);
    if (known) known.push(spot);
    else seen.set(panel, [spot]);
  }
  return seen;
}
