import { locksOf } from '../creases/fold-program.ts';
import { boxOf, type FlatFace } from '../folding/flat-faces.ts';
import type { PocketPlace } from '../folding/pocket-place.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { Side } from '../folding/regions.ts';
import type { Spot } from '../folding/spots.ts';
import type { Bounds } from '../geometry/bounds.ts';
import type { Isometry } from '../geometry/plane.ts';
import { styleOf } from '../styles/registry.ts';
import { type NamedLeaf, namedLeaves, opposite, panelsSeen } from './named-leaves.ts';

/** A rectangle of the finished piece that a maker can name, as it is seen from one side of the flat form. */
export interface Place extends Bounds {
  readonly name: string;
  /** From where it is looked at. */
  readonly side: Side;
  /** What can be cut from there: indices of the faces that lie there when the piece is set up, and of those beside them. */
  readonly faces: ReadonlySet<number>;
}

/** Sides that differ by less than this, in nanometres, are one. */
const SAME = 2000;

const sides = ['outside', 'inside'] as const;

/**
 * Where something can be put: each leaf from outside and inside, each pocket, the whole flat form from both sides, and
 * each panel of which something is seen. All of it follows from the folded form and the style's own words.
 */
export function placesOf(folded: Folded): readonly Place[] {
  const places: Place[] = [];
  const add = (name: string, side: Side, faces: ReadonlySet<number>, bounds: Bounds | undefined): void => {
    if (bounds && places.every((place) => place.name !== name))
      places.push({ name, side, faces, ...boundsIn(bounds) });
  };
  const addNew = (
    name: string,
    side: Side,
    { own, faces, spots }: Pick<NamedLeaf, 'own' | 'faces' | 'spots'>,
  ): void => {
    const bounds = boxOfSpots(spots);
    const isKnown = places.some(
      (place) =>
        place.side === side && isSame(place, bounds) && [...own].some((face) => place.faces.has(face)),
    );
    if (!isKnown) add(name, side, faces, bounds);
  };
  const { proof, plan } = folded;
  const { covers, pockets } = styleOf(plan.spec);
  // whatever is cut out of a tongue spoils its lock
  const tongues = new Set(locksOf(folded.program).map(({ tongue }) => tongue));
  const leaves = namedLeaves(folded).filter(({ panels }) => [...panels].some((panel) => !tongues.has(panel)));
  const [only, another] = leaves;
  // where all lies in one leaf, its two sides are the covers
  if (only && !another) for (const { name, side } of covers) addNew(name, sideOfForm(side, folded), only);
  for (const leaf of leaves) addNew(leaf.name, leaf.shownFrom, leaf);
  for (const pocket of pockets) {
    const around = leaves.filter(({ panels }) =>
      [pocket.panel, ...pocket.front].some((panel) => panels.has(panel)),
    );
    add(
      pocket.name,
      'inside',
      new Set(around.flatMap(({ faces }) => [...faces])),
      boxOfPocket(pocket, folded),
    );
  }
  const all = new Set(proof.faces.keys());
  for (const side of sides) {
    for (const leaf of leaves)
      if (side !== leaf.shownFrom) addNew(`${opposite(leaf.shows)} of the ${leaf.name}`, side, leaf);
    addNew(side, side, { own: all, faces: all, spots: proof.spots });
    for (const { own, faces, spots } of leaves)
      for (const [panel, seen] of panelsSeen(spots, side))
        if (!tongues.has(panel)) addNew(panel, side, { own, faces, spots: seen });
  }
  return places;
}

/** A cover is a side of the style's face panel; the panel may lie turned over in the flat form. */
function sideOfForm(side: Side, { proof, plan }: Folded): Side {
  const { face } = styleOf(plan.spec);
  const isTurned = proof.faces.some((each) => each.panel === face && each.turned);
  return (side === 'outside') === isTurned ? 'inside' : 'outside';
}

/** The motion from a place's own coordinates, from its top left corner as it is seen, to the flat form. */
export const toForm = ({ side, left, right, top }: Place): Isometry =>
  side === 'inside'
    ? { a: 1, b: 0, c: 0, d: 1, tx: left, ty: top }
    : { a: -1, b: 0, c: 0, d: 1, tx: right, ty: top };

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
