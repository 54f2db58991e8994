import type { FillStep } from '../creases/fold-program.ts';
import { boxOf, type FlatFace } from '../folding/flat-faces.ts';
import type { Folded } from '../folding/proof-of.ts';
import { styleOf } from '../styles/registry.ts';
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
  const arrows = styleOf(folded.plan.spec)
    .pockets.filter(({ name }) => step.pockets.includes(name))
    .map(({ panel, mouth }): Mark => {
      const box = boxOf(faces.filter((face) => face.panel === panel).flatMap(({ corners }) => corners));
      const { x, y } = look.onPage({ x: box[mouth], y: (box.top + box.bottom) / 2 });
      const inward = mouth === 'left' ? 1 : -1;
      return {
        kind: 'arrow',
        arrow: 'into',
        from: { x: x - inward * before, y },
        to: { x: x + inward * beyond, y },
      };
    });
  return [...contentsIn(folded).map((standing) => contentsMark(standing, look)), ...arrows];
}
