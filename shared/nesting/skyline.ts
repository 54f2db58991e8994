/** A level stretch of the upper outline of what is placed so far; y runs from the bottom edge of the sheet upwards. */
export interface Ledge {
  readonly x: number;
  readonly width: number;
  readonly y: number;
}

/** The outline of an empty sheet. */
export const flat = (width: number): readonly Ledge[] => [{ x: 0, width, y: 0 }];

/** Index of the lowest ledge, the leftmost of equals. */
export function lowest(ledges: readonly Ledge[]): number {
  let found = 0;
  for (let index = 1; index < ledges.length; index++)
    if ((ledges[index] as Ledge).y < (ledges[found] as Ledge).y) found = index;
  return found;
}

/** The outline after the stretch from `x`, so wide, was raised to `y`; ledges of one height that touch become one. */
export function raised(ledges: readonly Ledge[], x: number, width: number, y: number): readonly Ledge[] {
  const end = x + width;
  const result: Ledge[] = [];
  const add = (from: number, to: number, level: number) => {
    const last = result.at(-1);
    if (last !== undefined && last.y === level)
      result[result.length - 1] = { x: last.x, width: to - last.x, y: level };
    else if (to > from) result.push({ x: from, width: to - from, y: level });
  };
  let done = false;
  for (const ledge of ledges) {
    const ledgeEnd = ledge.x + ledge.width;
    if (ledgeEnd <= x || ledge.x >= end) {
      if (ledge.x >= end && !done) {
        add(x, end, y);
        done = true;
      }
      add(ledge.x, ledgeEnd, ledge.y);
      continue;
    }
    if (ledge.x < x) add(ledge.x, x, ledge.y);
    if (!done) {
      add(x, end, y);
      done = true;
    }
    if (ledgeEnd > end) add(end, ledgeEnd, ledge.y);
  }
  return result;
}
