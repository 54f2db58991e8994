import type { Folded } from '../folding/proof-of.ts';
import { bookLook } from './book-look.ts';
import { contentsIn, contentsMark } from './contents-outline.ts';
import type { Room } from './fit.ts';
import { group, lastForm } from './flat-scene.ts';
import { marksOf, paint } from './painted.ts';
import { namesIn } from './part-names.ts';
import type { Scene } from './picture.ts';
import { regionBadges } from './region-badges.ts';
import { seamOf } from './seam.ts';
import { printUps } from './sheet-prints.ts';
import { regionsOf, seenOf } from './visible.ts';

/** The folder as a book that stands half open: the front cover from outside, and what it opens on. */
export function halfOpenScene(folded: Folded, room: Room): Scene {
  const { pattern, plan } = folded;
  const form = lastForm(folded);
  const look = bookLook(pattern, form, room);
  const seen = seenOf(paint(pattern, form, look, printUps(plan), seamOf(folded)));
  const standing = contentsIn(folded).filter(({ cover }) => look.sideOf(cover.index) === 'inside');
  const leafOf = (face: number | undefined) => look.leaves[face ?? -1];
  // contents show through their own leaf, and a nearer leaf hides them
  const leaves = [...new Set(look.order.map(leafOf))].map((leaf) =>
    group('leaf', [
      ...seen.filter(({ face }) => leafOf(face.index) === leaf).flatMap(({ face }) => marksOf(face)),
      ...standing
        .filter(({ cover }) => leafOf(cover.index) === leaf)
        .map((contents) => contentsMark(contents, look)),
    ]),
  );
  return {
    name: 'half-open',
    heading: 'standing, half open',
    description: descriptionOf(standing.length > 0),
    width: look.width,
    height: look.height,
    marks: [group('paper', leaves), group('prints', regionBadges(regionsOf(seen), namesIn(folded)))],
  };
}

const descriptionOf = (holds: boolean): string =>
  `The folder stands like a half open book. At the left is the front cover from outside, at the right the pocket on the back cover${holds ? ', with what it holds as a dashed outline' : ''}.`;
