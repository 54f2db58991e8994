import { anglesAjar } from '../folding/angles.ts';
import type { Folded } from '../folding/proof-of.ts';
import { styleOf } from '../styles/registry.ts';
import { contentsIn, contentsMark } from './contents-outline.ts';
import type { Room } from './fit.ts';
import { group, lastForm } from './flat-scene.ts';
import { marksOfFaces } from './joined-faces.ts';
import { paint } from './painted.ts';
import type { Mark, Scene } from './picture.ts';
import { regionBadges } from './region-badges.ts';
import { seamOf } from './seam.ts';
import { printUps } from './sheet-prints.ts';
import { posedLook, type SolidLook } from './solid-look.ts';
import { regionsOf, seenOf } from './visible.ts';

/** The piece half open, as its style poses it: for a book the front cover from outside, and what it opens on. */
export function halfOpenScene(folded: Folded, room: Room): Scene {
  const look = posedLook(folded, anglesAjar(folded.program), room, true);
  const { ajar } = styleOf(folded.plan.spec).words;
  const { marks, holds } = posedMarks(folded, look);
  return {
    name: 'half-open',
    heading: ajar.heading,
    description: `${ajar.description}${holds ? ', with what it holds as a dashed outline' : ''}.`,
    width: look.width,
    height: look.height,
    marks,
  };
}

/**
 * A posed piece leaf by leaf, what it holds, and where its prints point.
 * @param filled whether anything is in it yet
 */
export function posedMarks(
  folded: Folded,
  look: SolidLook,
  filled = true,
): { readonly marks: readonly Mark[]; readonly holds: boolean } {
  const { pattern, plan, knockouts } = folded;
  const seen = seenOf(paint(pattern, lastForm(folded), look, printUps(plan), seamOf(folded), knockouts));
  const standing = (filled ? contentsIn(folded) : []).filter(
    ({ cover, sticksOut }) => sticksOut || look.sideOf(cover.index) === 'inside',
  );
  const leafOf = (face: number | undefined) => look.leaves[face ?? -1];
  // contents show through their own leaf, and a nearer leaf hides them
  const every = [...new Set(look.order.map(leafOf))].map((leaf) =>
    group('leaf', [
      ...marksOfFaces(seen.flatMap(({ face }) => (leafOf(face.index) === leaf ? [face] : []))),
      ...standing
        .filter(({ cover }) => leafOf(cover.index) === leaf)
        .map((contents) => contentsMark(contents, look)),
    ]),
  );
  // a leaf that others hide has no marks
  const leaves = every.filter(({ marks }) => marks.length > 0);
  return {
    marks: [group('paper', leaves), group('prints', regionBadges(regionsOf(seen), folded))].filter(
      ({ marks }) => marks.length > 0,
    ),
    holds: standing.length > 0,
  };
}
