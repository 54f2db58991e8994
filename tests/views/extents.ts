import { moveMarks, plainMarks } from '../../shared/views/move-marks.ts';
import type { Mark, PagePoint, Picture } from '../../shared/views/picture.ts';
import { plateOf, widthOf } from '../../shared/views/text-block.ts';

export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const around = (points: readonly PagePoint[]): Extent => ({
  left: Math.min(...points.map(({ x }) => x)),
  right: Math.max(...points.map(({ x }) => x)),
  top: Math.min(...points.map(({ y }) => y)),
  bottom: Math.max(...points.map(({ y }) => y)),
});

/** What a mark covers, text by its estimated width, without the width of strokes. */
export function extentOf(mark: Mark): Extent {
  switch (mark.kind) {
    case 'group':
      return around(mark.marks.map(extentOf).flatMap(cornersOf));
    case 'face':
    case 'glue':
      return around(mark.outline);
    case 'line':
      return around(mark.lines.flat());
    case 'arrow': {
      // a quadratic curve reaches half way to its control point at most
      const { from, to, by } = mark;
      const top = by && { x: (from.x + to.x + 2 * by.x) / 4, y: (from.y + to.y + 2 * by.y) / 4 };
      return around([from, to, ...(top ? [top] : [])]);
    }
    case 'finding': {
      const { x, y } = mark.at;
      // the ring around its number
      return { left: x - 2.65, right: x + 2.65, top: y - 2.65, bottom: y + 2.65 };
    }
    case 'text': {
      const { text, size, bold, plate, upward, at, anchor } = mark;
      const { width, height } = plate
        ? plateOf(text, size, bold)
        : { width: widthOf(text, size, bold), height: size };
      const [wide, high] = upward ? [height, width] : [width, height];
      const left = at.x - (anchor === 'start' ? 0 : anchor === 'end' ? wide : wide / 2);
      return { left, right: left + wide, top: at.y - high / 2, bottom: at.y + high / 2 };
    }
  }
}

const cornersOf = ({ left, right, top, bottom }: Extent): readonly PagePoint[] => [
  { x: left, y: top },
  { x: right, y: bottom },
];

export const overlap = (one: Extent, other: Extent): boolean =>
  Math.min(one.right, other.right) - Math.max(one.left, other.left) > 0.01 &&
  Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 0.01;

/** Marks that reach within a millimetre of the page's edge or beyond it, in words. */
export const outsideOf = ({ width, height, marks }: Picture): readonly string[] =>
  plainMarks(marks).flatMap((mark) => {
    const { left, right, top, bottom } = extentOf(mark);
    const inside = left >= 1 && top >= 1 && right <= width - 1 && bottom <= height - 1;
    return inside ? [] : [JSON.stringify(mark)];
  });

/** Pairs of texts that lie on each other, in words. */
export function collidingTexts({ marks }: Picture): readonly string[] {
  const texts = plainMarks(marks).filter((mark) => mark.kind === 'text');
  return texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .flatMap((other) =>
        overlap(extentOf(one), extentOf(other)) ? [`"${one.text}" and "${other.text}"`] : [],
      ),
  );
}

/** Pairs of scenes, or of a scene and the legend, that reach into each other, by name. */
export function collidingGroups({ marks }: Picture): readonly string[] {
  const groups = marks.filter((mark) => mark.kind === 'group');
  return groups.flatMap((one, index) =>
    groups
      .slice(index + 1)
      .flatMap((other) => (overlap(extentOf(one), extentOf(other)) ? [`${one.name} and ${other.name}`] : [])),
  );
}

/** The picture with one mark moved off the page, to see that the checks notice. */
export const spoilt = (picture: Picture): Picture => ({
  ...picture,
  marks: [...picture.marks.slice(0, -1), ...moveMarks(picture.marks.slice(-1), 0, -picture.height)],
});
