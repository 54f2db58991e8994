import type { Mark, PagePoint } from './picture.ts';

/** Marks moved across the page. */
export const moveMarks = (marks: readonly Mark[], x: number, y: number): readonly Mark[] =>
  marks.map((mark) => moved(mark, (point) => ({ x: point.x + x, y: point.y + y })));

function moved(mark: Mark, to: (point: PagePoint) => PagePoint): Mark {
  switch (mark.kind) {
    case 'face':
      return {
        ...mark,
        outline: mark.outline.map(to),
        ...(mark.left ? { left: mark.left.map((polygon) => polygon.map(to)) } : {}),
        ...(mark.sheet ? { sheet: [to(mark.sheet[0]), to(mark.sheet[1]), to(mark.sheet[2])] as const } : {}),
      };
    case 'glue':
      return { ...mark, outline: mark.outline.map(to) };
    case 'line':
      return { ...mark, lines: mark.lines.map((line) => line.map(to)) };
    case 'arrow':
      return {
        ...mark,
        from: to(mark.from),
        to: to(mark.to),
        ...(mark.by === undefined ? {} : { by: to(mark.by) }),
      };
    case 'finding':
    case 'text':
      return { ...mark, at: to(mark.at) };
    case 'group':
      return { ...mark, marks: mark.marks.map((inner) => moved(inner, to)) };
  }
}

/** All marks, those in groups in their groups' places. */
export const plainMarks = (marks: readonly Mark[]): readonly Exclude<Mark, { kind: 'group' }>[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? plainMarks(mark.marks) : [mark]));
