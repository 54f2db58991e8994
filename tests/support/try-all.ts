import type { Box } from '../../shared/nesting/box.ts';

/*
 * Packing by trying every whole position of every copy: slow, and so simple that it can be read at a glance. For sheets of
 * a few units only.
 */

interface Copy {
  readonly box: number;
  readonly ways: readonly (readonly [number, number])[];
}

const copiesOf = (boxes: readonly Box[]): Copy[] =>
  boxes.flatMap(({ width, height, count, turns }, box) =>
    Array.from({ length: count }, () => ({
      box,
      ways: turns
        ? ([
            [width, height],
            [height, width],
          ] as const)
        : ([[width, height]] as const),
    })),
  );

/** Whether all copies fit on one sheet, cell by cell. */
function fillsOne(copies: readonly Copy[], width: number, height: number): boolean {
  const cells = Array.from({ length: height }, () => Array.from({ length: width }, () => false));
  const each = (x: number, y: number, w: number, h: number, set?: boolean): boolean => {
    for (let row = y; row < y + h; row++)
      for (let column = x; column < x + w; column++) {
        if (set === undefined && cells[row]?.[column] !== false) return false;
        if (set !== undefined) (cells[row] as boolean[])[column] = set;
      }
    return true;
  };
  const place = (index: number): boolean => {
    const copy = copies[index];
    if (copy === undefined) return true;
    for (const [w, h] of copy.ways)
      for (let y = 0; y + h <= height; y++)
        for (let x = 0; x + w <= width; x++) {
          if (!each(x, y, w, h)) continue;
          each(x, y, w, h, true);
          if (place(index + 1)) return true;
          each(x, y, w, h, false);
        }
    return false;
  };
  return place(0);
}

export const fitsByTrying = (boxes: readonly Box[], width: number, height: number): boolean =>
  fillsOne(copiesOf(boxes), width, height);

/** The fewest equal sheets that hold all copies: every way of sharing the copies out is tried. */
export function fewestSheetsByTrying(boxes: readonly Box[], width: number, height: number): number {
  const copies = copiesOf(boxes);
  const share = (index: number, sheets: Copy[][], most: number): boolean => {
    const copy = copies[index];
    if (copy === undefined) return true;
    const tried = sheets.length < most ? [...sheets, []] : sheets;
    return tried.some((sheet, at) => {
      const more = [...sheet, copy];
      return (
        fillsOne(more, width, height) &&
        share(
          index + 1,
          tried.with(at, more).filter((each) => each.length > 0),
          most,
        )
      );
    });
  };
  for (let most = 1; ; most++) if (share(0, [], most)) return most;
}
