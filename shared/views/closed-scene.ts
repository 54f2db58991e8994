import type { Folded } from '../folding/proof-of.ts';
import { describeLength } from '../lengths/show-length.ts';
import { styleOf } from '../styles/registry.ts';
import { type Room, ratioFor } from './fit.ts';
import { flatLook } from './flat-look.ts';
import { flatMarks, group, lastForm } from './flat-scene.ts';
import { leavesOf } from './leaves.ts';
import { measureBelow, measureBeside, measureGap, measureRoom } from './measure-lines.ts';
import { moveMarks } from './move-marks.ts';
import type { Mark, Scene } from './picture.ts';
import { textSize } from './text-block.ts';
import { whatIsSeen } from './what-is-seen.ts';

/** Between the two covers, in millimetres: the height's measure stands in the middle. */
const between = 2 * measureGap;

/** The closed folder: its front cover with the spine at the left, and beside it the back cover. */
export function closedScene(folded: Folded, room: Room): Scene {
  const { width, height } = folded.plan.closed;
  const space = { width: (room.width - between) / 2 - measureRoom, height: room.height - measureRoom };
  const ratio = ratioFor(width, height, space);
  const [front, back] = coversOf(folded, ratio);
  if (!front || !back) throw new Error('a closed folder has two covers');
  const backAt = measureRoom + front.width + between;
  const right = backAt + back.width;
  const { measure } = folded.plan.spec;
  return {
    name: 'closed',
    heading: 'closed, front cover and back cover',
    description: descriptionOf(folded),
    ratio,
    width: right + measureRoom,
    height: front.height + measureRoom,
    marks: [
      group('front-cover', moveMarks(flatMarks(folded, front), measureRoom, 0)),
      group('back-cover', moveMarks(flatMarks(folded, back), backAt, 0)),
      group('spines', [
        spineText(measureRoom - measureGap + 0.8, front.height / 2),
        spineText(right + measureGap - 0.8, front.height / 2),
      ]),
      group('measures', [
        ...measureBelow(measureRoom, backAt - between, front.height, describeLength(width, measure)),
        ...measureBeside(0, front.height, backAt - between, describeLength(height, measure)),
      ]),
    ],
  };
}

/** Each pocket's leaf as its cover shows it. */
function coversOf(folded: Folded, ratio: number) {
  const { plan, pattern, proof } = folded;
  const leaves = leavesOf(pattern);
  return styleOf(plan.spec).pockets.map(({ panel }) => {
    const leaf = leaves[proof.faces.find((face) => face.panel === panel)?.index ?? -1];
    return flatLook(pattern, lastForm(folded), 'outside', ratio, (face) => leaves[face] === leaf);
  });
}

const spineText = (x: number, y: number): Mark => ({
  kind: 'text',
  text: 'spine',
  at: { x, y },
  size: textSize.label,
  anchor: 'middle',
  upward: true,
});

function descriptionOf(folded: Folded): string {
  const { closed, spec } = folded.plan;
  const [wide, high] = [closed.width, closed.height].map((length) => describeLength(length, spec.measure));
  return [
    `The closed folder, ${wide} wide and ${high} high.`,
    ...(['front cover', 'back cover'] as const).map(
      (view) => `At the ${view.replace(' cover', '')}: ${whatIsSeen(folded, view)}`,
    ),
  ].join(' ');
}
