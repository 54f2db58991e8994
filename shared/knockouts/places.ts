import { boxOf, type FlatFace } from '../folding/flat-faces.ts';
import type { PocketPlace } from '../folding/pocket-place.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { Side } from '../folding/regions.ts';
import type { Spot } from '../folding/spots.ts';
import type { Bounds } from '../geometry/bounds.ts';
import type { Isometry } from '../geometry/plane.ts';
import { styleOf } from '../styles/registry.ts';

/** A rectangle of the finished folder that a maker can name, as it is seen from one side of the flat form. */
export interface Place extends Bounds {
  readonly name: string;
  /** From where it is looked at. */
  readonly side: Side;
}

/** Panels of nearly the largest size in a leaf are what the leaf is called after, as front and back of a card. */
const nearlyLargest = 0.95;
/** Sides that differ by less than this, in nanometres, are one. */
const SAME = 2000;

/**
 * Where something can be put: the covers, each leaf from outside and inside, each pocket, the whole flat form from both
 * sides, and each panel of which something is seen. All of it follows from the folded form and the style's own words.
 */
export function placesOf(folded: Folded): readonly Place[] {
  const places: Place[] = [];
  const add = (name: string, side: Side, bounds: Bounds | undefined): void => {
    const isKnown = places.some((place) => place.side === side && isSame(place, bounds));
    if (bounds && !isKnown && places.every((place) => place.name !== name))
      places.push({ name, side, ...boundsIn(bounds) });
  };
  const { proof, plan } = folded;
  const { face, covers, pockets } = styleOf(plan.spec);
  const leaves = leavesIn(folded);
  const turned = proof.faces.some((each) => each.panel === face && each.turned);
  for (const [index, cover] of covers.entries()) {
    const leaf = leaves.find(({ panels }) => panels.has(face));
    // the other covers are other leaves, unless all lies in one
    if (!leaf || (index > 0 && leaves.length > 1)) continue;
    add(cover.name, (cover.side === 'outside') === turned ? 'inside' : 'outside', boxOfSpots(leaf.spots));
  }
  for (const side of ['outside', 'inside'] as const) {
    for (const leaf of leaves) {
      const seen = panelsSeen(leaf.spots, side);
      const label = [...mainPanels(leaf, folded)]
        .filter((name) => seen.has(name))
        .map((name) => labelOf(name, folded))
        .find((name) => places.every((place) => place.name !== name));
      if (label !== undefined) add(label, side, boxOfSpots(leaf.spots));
    }
  }
  for (const pocket of pockets) {
    const bounds = boxOfPocket(pocket, folded);
    if (bounds) places.push({ name: pocket.name, side: 'inside', ...boundsIn(bounds) });
  }
  for (const side of ['outside', 'inside'] as const) {
    for (const leaf of leaves) {
      const [main = ''] = mainPanels(leaf, folded);
      add(`${side} of the ${labelOf(main, folded)}`, side, boxOfSpots(leaf.spots));
    }
    add(side, side, boxOfSpots(proof.spots));
    for (const [panel, spots] of panelsSeen(proof.spots, side)) add(panel, side, boxOfSpots(spots));
  }
  return places;
}

/** The motion from a place's own coordinates, from its top left corner as it is seen, to the flat form. */
export const toForm = ({ side, left, right, top }: Place): Isometry =>
  side === 'inside'
    ? { a: 1, b: 0, c: 0, d: 1, tx: left, ty: top }
    : { a: -1, b: 0, c: 0, d: 1, tx: right, ty: top };

interface Leaf {
  readonly panels: ReadonlySet<string>;
  readonly spots: readonly Spot[];
}

function leavesIn({ proof: { faces, leaves, spots } }: Folded): readonly Leaf[] {
  return [...new Set(leaves)].map((leaf) => {
    const own = ({ index }: FlatFace) => leaves[index] === leaf;
    return {
      panels: new Set(faces.filter(own).map(({ panel }) => panel)),
      spots: spots.filter(({ stack }) => stack.some(own)),
    };
  });
}

function mainPanels({ panels }: Leaf, { program }: Folded): ReadonlySet<string> {
  const sizes = program.panels
    .filter(({ name }) => panels.has(name))
    .map(({ name, left, right, top, bottom }) => ({ name, area: (right - left) * (bottom - top) }));
  const largest = Math.max(...sizes.map(({ area }) => area));
  return new Set(sizes.filter(({ area }) => area >= nearlyLargest * largest).map(({ name }) => name));
}

const labelOf = (panel: string, { program }: Folded): string =>
  program.panels.find(({ name }) => name === panel)?.label ?? panel;

/** What is seen of each panel, the panel nearest to the viewer at each spot. */
function panelsSeen(spots: readonly Spot[], side: Side): ReadonlyMap<string, readonly Spot[]> {
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

const boundsIn = ({ left, top, right, bottom }: Bounds): Bounds => ({ left, top, right, bottom });

const boxOfSpots = (spots: readonly Spot[]): Bounds | undefined =>
  spots.length === 0
    ? undefined
    : boxOf(
        spots.flatMap(({ left, right, top, bottom }) => [
          { x: left, y: top },
          { x: right, y: bottom },
        ]),
      );

function boxOfPocket({ panel, front }: PocketPlace, { proof }: Folded): Bounds | undefined {
  const covered = boxOfFaces(proof.faces.filter((face) => face.panel === panel));
  const covering = boxOfFaces(proof.faces.filter((face) => front.includes(face.panel)));
  return covered && covering && common(covered, covering);
}

const boxOfFaces = (faces: readonly FlatFace[]): Bounds | undefined =>
  faces.length === 0 ? undefined : boxOf(faces.flatMap(({ corners }) => corners));

function common(one: Bounds, other: Bounds): Bounds | undefined {
  const left = Math.max(one.left, other.left);
  const right = Math.min(one.right, other.right);
  const top = Math.max(one.top, other.top);
  const bottom = Math.min(one.bottom, other.bottom);
  return left < right && top < bottom ? { left, right, top, bottom } : undefined;
}

const isSame = (place: Bounds, bounds: Bounds | undefined): boolean =>
  bounds !== undefined &&
  (['left', 'top', 'right', 'bottom'] as const).every((side) => Math.abs(place[side] - bounds[side]) < SAME);
