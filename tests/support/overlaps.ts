import type { Piece } from './read-svg.ts';

/** Millimetres: nearer than this is the same, since coordinates are rounded to 0.001 of at most a millimetre. */
const SAME = 0.002;

interface Laid {
  readonly offset: number;
  readonly start: number;
  readonly end: number;
}

type Direction = 'level' | 'upright' | 'falling' | 'rising';

/** A line by its direction, how far off it lies, and from where to where it runs. */
function laid([p, q]: Piece): { readonly direction: Direction; readonly line: Laid } | undefined {
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  const span = (a: number, b: number, offset: number): Laid => ({
    offset,
    start: Math.min(a, b),
    end: Math.max(a, b),
  });
  if (Math.abs(dy) < SAME) return { direction: 'level', line: span(p.x, q.x, p.y) };
  if (Math.abs(dx) < SAME) return { direction: 'upright', line: span(p.y, q.y, p.x) };
  if (Math.abs(dx - dy) < SAME) return { direction: 'falling', line: span(p.x, q.x, p.y - p.x) };
  if (Math.abs(dx + dy) < SAME) return { direction: 'rising', line: span(p.x, q.x, p.y + p.x) };
  return undefined;
}

/**
 * What lies twice: pieces that run over each other along one line, equal ones included. Also names pieces that
 * run in none of the four directions that a folder of rectangles and 45° corners has.
 */
export function overlapsAmong(pieces: readonly Piece[]): readonly string[] {
  const faults: string[] = [];
  const byDirection = new Map<Direction, Laid[]>();
  for (const piece of pieces) {
    const found = laid(piece);
    if (!found || piece.length !== 2) faults.push(`a piece runs askew: ${JSON.stringify(piece)}`);
    else byDirection.set(found.direction, [...(byDirection.get(found.direction) ?? []), found.line]);
  }
  for (const [direction, lines] of byDirection) {
    for (const line of onOneLine(lines)) {
      const inOrder = line.toSorted((one, other) => one.start - other.start);
      let reached = Number.NEGATIVE_INFINITY;
      for (const { start, end, offset } of inOrder) {
        if (start < reached - SAME)
          faults.push(
            `${direction} lines at ${offset.toFixed(3)} lie over each other from ${start.toFixed(3)}`,
          );
        reached = Math.max(reached, end);
      }
    }
  }
  return faults;
}

function onOneLine(lines: readonly Laid[]): readonly (readonly Laid[])[] {
  const groups: Laid[][] = [];
  for (const line of lines.toSorted((one, other) => one.offset - other.offset)) {
    const open = groups.at(-1);
    const before = open?.at(-1);
    if (open && before && line.offset - before.offset < SAME) open.push(line);
    else groups.push([line]);
  }
  return groups;
}
