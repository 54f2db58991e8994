import { boxOf } from '../folding/flat-faces.ts';
import type { FlatForm } from '../folding/fold-in-steps.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { Side } from '../folding/regions.ts';
import type { Point } from '../geometry/plane.ts';
import { describeLength } from '../lengths/show-length.ts';
import { styleOf } from '../styles/registry.ts';
import { contentsIn, contentsMark } from './contents-outline.ts';
import { findingMarks } from './finding-marks.ts';
import { type Room, ratioFor } from './fit.ts';
import { type FlatLook, flatLook } from './flat-look.ts';
import { marksOfFaces } from './joined-faces.ts';
import { measureBelow, measureBeside, measureRoom } from './measure-lines.ts';
import { moveMarks } from './move-marks.ts';
import { paint } from './painted.ts';
import type { GroupMark, Mark, Scene } from './picture.ts';
import { regionBadges } from './region-badges.ts';
import { seamOf } from './seam.ts';
import { printUps } from './sheet-prints.ts';
import { regionsOf, seenOf } from './visible.ts';
import { whatIsSeen } from './what-is-seen.ts';

/** Everything of the finished form but its measures: paper, contents, and where prints point. */
export function flatMarks(folded: Folded, look: FlatLook): readonly Mark[] {
  const { pattern, plan, proof, knockouts } = folded;
  const seen = seenOf(paint(pattern, lastForm(folded), look, printUps(plan), seamOf(folded), knockouts));
  const contents = look.side === 'inside' ? contentsIn(folded).filter(({ inFlat }) => inFlat) : [];
  const all = [
    group('paper', marksOfFaces(seen.map(({ face }) => face))),
    group(
      'contents',
      contents.map((standing) => contentsMark(standing, look)),
    ),
    group('prints', regionBadges(regionsOf(seen), folded)),
    group('findings', findingMarks(folded, proof.faces, look)),
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

/** The flat form, open, from one side, with the finished piece's measures. */
export function flatScene(folded: Folded, side: Side, room: Room): Scene {
  const { plan, pattern } = folded;
  const style = styleOf(plan.spec);
  const flat = style.flat(plan.dimensions, plan.spec);
  const space = { width: room.width - 2 * measureRoom, height: room.height - measureRoom };
  const contents =
    side === 'inside' ? contentsIn(folded).flatMap(({ inFlat, corners }) => (inFlat ? corners : [])) : [];
  const high = Math.max(flat.height, heightOf(contents));
  const look = flatLook(pattern, lastForm(folded), side, ratioFor(flat.width, high, space), contents);
  const marks = [...flatMarks(folded, look), group('measures', measures(folded, look))];
  const { words } = style;
  const { inside } = words;
  return {
    name: side,
    heading: `flat, seen from ${side}${side === 'inside' && inside !== undefined ? `, ${inside}` : ''}`,
    description: `The ${words.flat} ${introductionOf(folded, side)} ${whatIsSeen(folded, side)}`,
    ratio: look.ratio,
    // as much room on the left as the measure takes on the right, so that the sleeve stands in the middle
    width: look.width + 2 * measureRoom,
    height: look.height + measureRoom,
    marks: moveMarks(marks, measureRoom, 0),
  };
}

/** What sticks out of the form is seen wholly. */
export const heightOf = (points: readonly Point[]): number =>
  points.length === 0 ? 0 : Math.max(...points.map(({ y }) => y)) - Math.min(...points.map(({ y }) => y));

function introductionOf({ program }: Folded, side: Side): string {
  if (side === 'outside') return 'after it was turned over left to right.';
  return program.steps.length === 0 ? 'as it lies.' : 'as it lies when it has been folded.';
}

/** The face panel, which is as large as the finished piece. */
function measures({ plan, proof }: Folded, look: FlatLook): readonly Mark[] {
  const { measure } = plan.spec;
  const { face } = styleOf(plan.spec);
  const { left, right, top, bottom } = boxOf(
    proof.faces.filter(({ panel }) => panel === face).flatMap(({ corners }) => corners),
  );
  const [from, to] = [left, right].map((x) => look.onPage({ x, y: top }).x).toSorted((p, q) => p - q);
  const [above, below] = [top, bottom].map((y) => look.onPage({ x: left, y }).y);
  return [
    ...measureBelow(from ?? 0, to ?? 0, look.height, describeLength(right - left, measure)),
    ...measureBeside(above ?? 0, below ?? 0, look.width, describeLength(bottom - top, measure)),
  ];
}
