import type { GlueStep } from '../creases/fold-program.ts';
import { facesAcross } from '../folding/faces-across.ts';
import type { FlatFace } from '../folding/flat-faces.ts';
import type { Bond } from '../folding/glue-bonds.ts';
import { glueRoom, type Surroundings } from '../folding/glue-room.ts';
import { jointsOf } from '../folding/joints.ts';
import { mouthsOf } from '../folding/mouths.ts';
import { platesOf } from '../folding/plates.ts';
import type { Folded } from '../folding/proof-of.ts';
import { boxCorners } from '../geometry/bounds.ts';
import { inverse, move, type Point } from '../geometry/plane.ts';
import { polygon } from '../geometry/walk.ts';
import { pocketsOf } from '../styles/pockets-of.ts';
import type { GuideZone } from './drawing.ts';
import { slug } from './slug.ts';

/**
 * Where a folder is glued, as zones of its open blank: each strip, where it meets the layer that it sticks to, and the
 * room that its glue must not leave. Everything comes from the proof: what was not proved is not shown.
 */
export function glueGuide(folded: Folded): readonly GuideZone[] {
  const around = surroundingsOf(folded);
  const zones: GuideZone[] = [];
  const [snapX, snapY] = [snapping(), snapping()];
  const zone = (id: string, kind: GuideZone['kind'], face: GuideZone['face'], corners: readonly Point[]) => ({
    id,
    kind,
    face,
    contours: [polygon(corners.map(({ x, y }) => ({ x: snapX(x), y: snapY(y) })))],
  });
  const rooms = new Set<string>();
  for (const step of folded.program.steps) {
    if (step.kind !== 'glue') continue;
    for (const [index, bond] of bondsOf(step, folded).entries()) {
      const id = `${slug(step.name)}-${index + 1}`;
      const { face } = bond.strip;
      zones.push(zone(id, 'glue', face, boxCorners(bond.strip)));
      zones.push(zone(`${id}-bare`, 'bare', faceMet(bond), onSheet(bond.box.corners, bond.other)));
      const room = zone(`${id}-keep-out`, 'keepOut', face, onSheet(glueRoom(bond, around), bond.owner));
      const same = JSON.stringify(room.contours);
      if (!rooms.has(same)) zones.push(room);
      rooms.add(same);
    }
  }
  return zones;
}

function surroundingsOf({ plan, pattern, proof }: Folded): Surroundings {
  const neighbours = facesAcross(pattern);
  const { faces, pockets } = proof;
  return {
    faces,
    corners: pattern.faces.map(({ vertices }) => vertices),
    neighbours,
    plates: platesOf(neighbours),
    joints: jointsOf(pattern, neighbours, faces),
    mouths: mouthsOf(pocketsOf(plan), faces),
    pockets,
  };
}

const bondsOf = ({ strips }: GlueStep, { proof }: Folded): readonly Bond[] =>
  proof.bonds.filter(({ strip }) => strips.includes(strip));

/** Which face of the other layer's paper the glue meets. */
function faceMet({ strip, owner, other }: Bond): 'inside' | 'outside' {
  const upward = (strip.face === 'inside') !== owner.turned;
  return upward === other.turned ? 'inside' : 'outside';
}

/** Points of the flat form on the open sheet, as a face lies. */
const onSheet = (points: readonly Point[], { lies }: FlatFace): readonly Point[] =>
  points.map((point) => move(inverse(lies), point));

/** Nearer than this, in nanometres, is one line: what has been carried through folds is rounded. */
const SAME = 1000;

/** Makes whole nanometres of coordinates, the same of all that only rounding keeps apart. */
function snapping(): (value: number) => number {
  const known: number[] = [];
  return (value) => {
    const found = known.find((each) => Math.abs(each - value) < SAME);
    if (found !== undefined) return found;
    known.push(Math.round(value) + 0);
    return known.at(-1) ?? value;
  };
}
