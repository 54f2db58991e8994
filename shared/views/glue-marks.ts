import type { GlueStep } from '../creases/fold-program.ts';
import { covers, type FlatFace } from '../folding/flat-faces.ts';
import { move } from '../geometry/plane.ts';
import type { FlatLook } from './flat-look.ts';
import type { Mark } from './picture.ts';

/** Every strip of glue where it lies, also where layers hide it. */
export const glueMarks = (
  { strips }: GlueStep,
  faces: readonly FlatFace[],
  look: FlatLook,
): readonly Mark[] =>
  strips.flatMap(({ panel, left, right, top, bottom }): Mark[] => {
    const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
    const face = faces.find((each) => {
      const { x, y } = move(each.lies, middle);
      return each.panel === panel && covers(each, x, y);
    });
    if (!face) return [];
    const corners = [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ];
    return [{ kind: 'glue', outline: corners.map((corner) => look.at(face.index, corner)) }];
  });
