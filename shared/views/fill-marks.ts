import type { FillStep } from '../creases/fold-program.ts';
import { boxOf, type FlatFace } from '../folding/flat-faces.ts';
import { isLevel } from '../folding/pocket-place.ts';
import { mouthOf } from '../folding/pockets.ts';
import type { Folded } from '../folding/proof-of.ts';
import { pocketsOf } from '../styles/pockets-of.ts';
import { contentsIn, contentsMark } from './contents-outline.ts';
import type { FlatLook } from './flat-look.ts';
import type { Mark } from './picture.ts';

/** An arrow begins and ends this far from the mouth, in millimetres. */
const before = 5.5;
const beyond = 9;

/** What slides in, where it comes to stand, and an arrow through each mouth. */
export function fillMarks(
  step: FillStep,
  folded: Folded,
  faces: readonly FlatFace[],
  look: FlatLook,
): readonly Mark[] {
  const arrows = pocketsOf(folded.plan)
    .filter(({ name, walls }) => step.pockets.includes(name) && walls === undefined)
    .map((place): Mark => {
      const box = boxOf(faces.filter((face) => face.panel === place.panel).flatMap(({ corners }) => corners));
      const at = mouthOf(place, faces);
      const level = isLevel(place.mouth);
      const { x, y } = look.onPage(
        level ? { x: (box.left + box.right) / 2, y: at } : { x: at, y: (box.top + box.bottom) / 2 },
      );
      const inward = place.mouth === 'left' || place.mouth === 'top' ? 1 : -1;
      const along = (by: number) => (level ? { x, y: y + inward * by } : { x: x + inward * by, y });
      return { kind: 'arrow', arrow: 'into', from: along(-before), to: along(beyond) };
    });
  return [...contentsIn(folded).map((standing) => contentsMark(standing, look)), ...arrows];
}
