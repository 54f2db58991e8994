import type { Mark, PagePoint } from './picture.ts';
import { textSize } from './text-block.ts';

const tick = 1.5;
/** Between what is measured and the line. */
export const measureGap = 4;
/** What a measure takes beside what is measured. */
export const measureRoom = measureGap + textSize.label;

/** A dimension below something: a line with a tick at each end, and its text in the middle. */
export function measureBelow(left: number, right: number, bottom: number, text: string): readonly Mark[] {
  const y = bottom + measureGap;
  return measure({ x: left, y }, { x: right, y }, { x: 0, y: tick }, text, false);
}

/** A dimension to the right of something, its text from bottom to top. */
export function measureBeside(top: number, bottom: number, right: number, text: string): readonly Mark[] {
  const x = right + measureGap;
  return measure({ x, y: top }, { x, y: bottom }, { x: tick, y: 0 }, text, true);
}

function measure(from: PagePoint, to: PagePoint, end: PagePoint, text: string, upward: boolean): Mark[] {
  const tickAt = ({ x, y }: PagePoint) => [
    { x: x - end.x, y: y - end.y },
    { x: x + end.x, y: y + end.y },
  ];
  return [
    { kind: 'line', line: 'measure', lines: [[from, to], tickAt(from), tickAt(to)] },
    {
      kind: 'text',
      text,
      at: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
      size: textSize.label,
      anchor: 'middle',
      upward,
      plate: true,
    },
  ];
}
