import { boxOf } from '../../../shared/folding/flat-faces.ts';
import type { Folded } from '../../../shared/folding/proof-of.ts';
import { type Bounds, boundsOf } from '../../../shared/geometry/bounds.ts';
import { plainMarks } from '../../../shared/views/move-marks.ts';
import type { Grip, Sight } from './answer.ts';

/** The box around all paper of a picture, in its own millimetres. */
const paperIn = ({ marks }: Sight): Bounds =>
  boxOf(plainMarks(marks).flatMap((mark) => (mark.kind === 'face' ? mark.outline : [])));

/** Where the picture of the flat form from a side shows what is cut out of places that are seen from there. */
export function gripsIn(folded: Folded, side: Grip['side'], sight: Sight): readonly Grip[] {
  const form = boxOf(folded.proof.faces.flatMap(({ corners }) => corners));
  const paper = paperIn(sight);
  const scale = (paper.right - paper.left) / (form.right - form.left);
  return (folded.knockouts?.list ?? [])
    .filter(({ place }) => place.side === side)
    .map(({ index, title, onForm }) => {
      const { left, top, right, bottom } = boundsOf(onForm);
      // from outside the form is seen mirrored, as when a page is turned
      const from = side === 'inside' ? left - form.left : form.right - right;
      return {
        index,
        title,
        side,
        x: paper.left + from * scale,
        y: paper.top + (top - form.top) * scale,
        width: (right - left) * scale,
        height: (bottom - top) * scale,
      };
    });
}
