import { boxOf } from '../folding/flat-faces.ts';
import type { FlatForm } from '../folding/fold-in-steps.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { Side } from '../folding/regions.ts';
import { describeLength } from '../lengths/show-length.ts';
import { styleOf } from '../styles/registry.ts';
import { contentsIn, contentsMark } from './contents-outline.ts';
import { type Room, ratioFor } from './fit.ts';
import { type FlatLook, flatLook } from './flat-look.ts';
import { measureBelow, measureBeside, measureRoom } from './measure-lines.ts';
import { moveMarks } from './move-marks.ts';
import { marksOf, paint } from './painted.ts';
import { namesIn } from './part-names.ts';
import type { GroupMark, Mark, Scene } from './picture.ts';
import { regionBadges } from './region-badges.ts';
import { seamOf } from './seam.ts';
import { printUps } from './sheet-prints.ts';
import { regionsOf, seenOf } from './visible.ts';
import { whatIsSeen } from './what-is-seen.ts';

/** Everything of the finished form but its measures: paper, contents, and where prints point. */
export function flatMarks(folded: Folded, look: FlatLook): readonly Mark[] {
  const seen = seenOf(paint(folded.pattern, lastForm(folded), look, printUps(folded.plan), seamOf(folded)));
  const contents = look.side === 'inside' ? contentsIn(folded) : [];
  const all = [
    group(
      'paper',
      seen.flatMap(({ face }) => marksOf(face)),
    ),
    group(
      'contents',
      contents.map((standing) => contentsMark(standing, look)),
    ),
    group('prints', regionBadges(regionsOf(seen), namesIn(folded))),
  ];
  return all.filter(({ marks }) => marks.length > 0);
}

export const group = (name: string, marks: readonly Mark[]): GroupMark => ({ kind: 'group', name, marks });

/** The finished flat form. */
export function lastForm({ proof }: Folded): FlatForm {
  const form = proof.forms.at(-1);
  if (!form) throw new Error('a program without steps has no folded form');
  return form;
}

const headings = {
  outside: 'flat, seen from outside',
  inside: 'flat, seen from inside, where the pockets are',
};
const introductions = {
  outside: 'The flat sleeve after it was turned over left to right.',
  inside: 'The flat sleeve as it lies when it has been folded.',
};

/** The flat sleeve, open, from one side, with the closed folder's measures. */
export function flatScene(folded: Folded, side: Side, room: Room): Scene {
  const { plan, pattern } = folded;
  const flat = styleOf(plan.spec).flat(plan.dimensions);
  const space = { width: room.width - 2 * measureRoom, height: room.height - measureRoom };
  const look = flatLook(pattern, lastForm(folded), side, ratioFor(flat.width, flat.height, space));
  const marks = [...flatMarks(folded, look), group('measures', measures(folded, look))];
  return {
    name: side,
    heading: headings[side],
    description: `${introductions[side]} ${whatIsSeen(folded, side)}`,
    ratio: look.ratio,
    // as much room on the left as the measure takes on the right, so that the sleeve stands in the middle
    width: look.width + 2 * measureRoom,
    height: look.height + measureRoom,
    marks: moveMarks(marks, measureRoom, 0),
  };
}

function measures({ plan, proof }: Folded, look: FlatLook): readonly Mark[] {
  const { measure } = plan.spec;
  const cover = styleOf(plan.spec).pockets[0]?.panel;
  const { left, right, top } = boxOf(
    proof.faces.filter(({ panel }) => panel === cover).flatMap(({ corners }) => corners),
  );
  const [from, to] = [left, right].map((x) => look.onPage({ x, y: top }).x).toSorted((p, q) => p - q);
  return [
    ...measureBelow(from ?? 0, to ?? 0, look.height, describeLength(plan.closed.width, measure)),
    ...measureBeside(0, look.height, look.width, describeLength(plan.closed.height, measure)),
  ];
}
