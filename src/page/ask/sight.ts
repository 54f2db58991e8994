import { plainMarks } from '../../../shared/views/move-marks.ts';
import type { PagePoint, Scene } from '../../../shared/views/picture.ts';
import type { Sight } from './answer.ts';

/** Around what is drawn, in millimetres, for the width of lines. */
const margin = 2;

type PlainMark = ReturnType<typeof plainMarks>[number];

/** Where a mark's ink reaches, as far as a frame around it needs to know. */
function pointsOf(mark: PlainMark): readonly PagePoint[] {
  switch (mark.kind) {
    case 'face':
    case 'glue':
      return mark.outline;
    case 'line':
      return mark.lines.flat();
    case 'arrow':
      return [mark.from, mark.to, ...(mark.by ? [mark.by] : [])];
    case 'finding':
      return [mark.at];
    case 'text':
      return [
        { x: mark.at.x, y: mark.at.y - mark.size },
        { x: mark.at.x, y: mark.at.y + mark.size },
      ];
  }
}

/** A scene with a tight frame around it. */
export function sightOf({ name, description, marks, ratio }: Scene): Sight {
  const points = plainMarks(marks).flatMap(pointsOf);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs) - margin, Math.min(...ys) - margin];
  return {
    name,
    description,
    marks,
    left,
    top,
    width: Math.max(...xs) + margin - left,
    height: Math.max(...ys) + margin - top,
    ...(ratio === undefined ? {} : { ratio }),
  };
}
