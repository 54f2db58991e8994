import type { Folded } from '../folding/proof-of.ts';
import { squareView } from '../folding/square-view.ts';
import { describeLength } from '../lengths/show-length.ts';
import { styleOf } from '../styles/registry.ts';
import type { Cover } from '../styles/style.ts';
import { type Room, ratioFor } from './fit.ts';
import { group, lastForm } from './flat-scene.ts';
import { marksOfFaces } from './joined-faces.ts';
import { measureBelow, measureBeside, measureGap, measureRoom } from './measure-lines.ts';
import { moveMarks } from './move-marks.ts';
import { paint } from './painted.ts';
import type { Mark, Scene } from './picture.ts';
import { regionBadges } from './region-badges.ts';
import { seamOf } from './seam.ts';
import { printUps } from './sheet-prints.ts';
import { type SolidLook, solidLook } from './solid-look.ts';
import { textSize } from './text-block.ts';
import { regionsOf, seenOf } from './visible.ts';
import { whatIsSeen } from './what-is-seen.ts';

/** Between the two covers, in millimetres: the height's measure stands in the middle. */
const between = 2 * measureGap;

/** The finished piece, seen square to its face from both sides: a folder's front cover, and beside it the back cover. */
export function closedScene(folded: Folded, room: Room): Scene {
  const { plan } = folded;
  const { width, height } = plan.closed;
  const { covers, words } = styleOf(plan.spec);
  const space = { width: (room.width - between) / 2 - measureRoom, height: room.height - measureRoom };
  const ratio = ratioFor(width, height, space);
  const [front, back] = covers.map(({ side }) =>
    solidLook(folded, folded.proof.motions, folded.proof.leaves, squareView(folded, side), () => ratio / 1e6),
  );
  if (!front || !back) throw new Error('a finished piece has two sides');
  const backAt = measureRoom + front.width + between;
  const right = backAt + back.width;
  const { measure } = plan.spec;
  const marks = [
    ...[front, back].map((look, index) =>
      group(
        (covers[index]?.name ?? '').replaceAll(' ', '-'),
        moveMarks(squareMarks(folded, look), index === 0 ? measureRoom : backAt, 0),
      ),
    ),
    ...besideMarks(covers, [
      { left: measureRoom, right: measureRoom + front.width, middle: front.height / 2 },
      { left: backAt, right, middle: front.height / 2 },
    ]),
    group('measures', [
      ...measureBelow(measureRoom, backAt - between, front.height, describeLength(width, measure)),
      ...measureBeside(0, front.height, backAt - between, describeLength(height, measure)),
    ]),
  ];
  return {
    name: 'closed',
    heading: `${words.ready}, ${covers.map(({ name }) => name).join(' and ')}`,
    description: descriptionOf(folded),
    ratio,
    width: right + measureRoom,
    height: front.height + measureRoom,
    marks,
  };
}

/** What is seen of the piece, and where its prints point. */
function squareMarks(folded: Folded, look: SolidLook): readonly Mark[] {
  const { pattern, plan, knockouts } = folded;
  const seen = seenOf(paint(pattern, lastForm(folded), look, printUps(plan), seamOf(folded), knockouts));
  return [
    group('paper', marksOfFaces(seen.map(({ face }) => face))),
    group('prints', regionBadges(regionsOf(seen), folded)),
  ].filter(({ marks }) => marks.length > 0);
}

/** What is seen edge-on beside a cover, in words from bottom to top. */
function besideMarks(
  covers: readonly Cover[],
  places: readonly { readonly left: number; readonly right: number; readonly middle: number }[],
): readonly Mark[] {
  const texts = covers.flatMap(({ beside }, index) => {
    const place = places[index];
    if (!beside || !place) return [];
    const x = beside.at === 'left' ? place.left - measureGap + 0.8 : place.right + measureGap - 0.8;
    return [{ text: beside.text, mark: upward(beside.text, x, place.middle) }];
  });
  const [first] = texts;
  return first
    ? [
        group(
          `${first.text}s`,
          texts.map(({ mark }) => mark),
        ),
      ]
    : [];
}

const upward = (text: string, x: number, y: number): Mark => ({
  kind: 'text',
  text,
  at: { x, y },
  size: textSize.label,
  anchor: 'middle',
  upward: true,
});

function descriptionOf(folded: Folded): string {
  const { closed, spec } = folded.plan;
  const { words, covers } = styleOf(spec);
  const [wide, high] = [closed.width, closed.height].map((length) => describeLength(length, spec.measure));
  return [
    `The ${words.ready} ${words.piece}, ${wide} wide and ${high} high.`,
    ...covers.map(({ name }) => `At the ${name.replace(' cover', '')}: ${whatIsSeen(folded, name)}`),
  ].join(' ');
}
