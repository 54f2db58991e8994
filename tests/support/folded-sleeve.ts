import { blankOf, type Sleeve } from './expected-lines.ts';
import type { At } from './read-svg.ts';

/*
 * A twin sleeve folded by hand, from the way it is made and not from the program that folds it. Millimetres; the flat
 * form lies as the panel row between the hems lies on the blank, seen from inside.
 */

/** One layer of paper at a point of the flat form: which part of the blank it is, and which point of it. */
export interface SleeveLayer {
  readonly at: At;
  readonly row: 'top flap' | 'panel' | 'bottom flap';
  readonly column: 'hem' | 'middle';
  /** A corner of the blank that is folded onto its hem. */
  readonly corner: boolean;
}

/** Every layer at a point of the flat form, in no order. */
export function layersAt(sleeve: Sleeve, q: At): readonly SleeveLayer[] {
  const { hem: h, topFlap: t, height: H } = sleeve;
  const { width, height } = blankOf(sleeve);
  const rows = [
    { row: 'panel', y: q.y },
    { row: 'top flap', y: 2 * t - q.y },
    { row: 'bottom flap', y: 2 * (t + H) - q.y },
  ] as const;
  const columns = [
    { column: 'middle', x: q.x },
    { column: 'hem', x: 2 * h - q.x },
    { column: 'hem', x: 2 * (width - h) - q.x },
  ] as const;
  return rows.flatMap(({ row, y }) => {
    if (y < 0 || y > height) return [];
    return columns.flatMap(({ column, x }): SleeveLayer[] => {
      const inColumn = column === 'hem' ? (x >= 0 && x <= h) || (x >= width - h && x <= width) : true;
      if (!inColumn) return [];
      const at = { x, y };
      const folded = overCorner(sleeve, at);
      const layer = { at, row, column, corner: false };
      if (column === 'middle') return [layer];
      const isCut = isInCorner(sleeve, at);
      return [
        ...(isCut ? [] : [layer]),
        ...(sleeve.cornersFolded && folded && isInCorner(sleeve, folded)
          ? [{ at: folded, row, column, corner: true }]
          : []),
      ];
    });
  });
}

/** The nearest corner of the blank, and how far a point is from its two sides. */
function fromCorner(sleeve: Sleeve, { x, y }: At) {
  const { width, height } = blankOf(sleeve);
  const [right, bottom] = [x > width / 2, y > height / 2];
  return { right, bottom, across: right ? width - x : x, along: bottom ? height - y : y };
}

/** Corners are triangles with legs as long as the hem is deep. */
function isInCorner(sleeve: Sleeve, point: At): boolean {
  const { across, along } = fromCorner(sleeve, point);
  return across >= 0 && along >= 0 && across + along < sleeve.hem;
}

/** The point that lies on this one once the corner is folded over its score at 45°. */
function overCorner(sleeve: Sleeve, point: At): At | undefined {
  const { hem } = sleeve;
  const { width, height } = blankOf(sleeve);
  const { right, bottom, across, along } = fromCorner(sleeve, point);
  if (across > hem || along > hem) return undefined;
  const [x, y] = [hem - along, hem - across];
  return { x: right ? width - x : x, y: bottom ? height - y : y };
}

/**
 * The layer that is seen at a point. From outside: the hems of the panel row where they are turned out, else the panel
 * row. From inside, in a flat seam: the bottom flap over the top flap over the panel row; of a flap the corner, then
 * the hem, then the rest where hems are turned out, and the other way round where they are turned in.
 */
export function seenAt(
  layers: readonly SleeveLayer[],
  side: 'outside' | 'inside',
  { hemsOut }: Sleeve,
): SleeveLayer | undefined {
  const rank = ({ row, column, corner }: SleeveLayer): number => {
    const group = ['panel', 'top flap', 'bottom flap'].indexOf(row);
    const depth = corner ? 1 : column === 'hem' ? 2 : 0;
    if (row === 'panel') return depth === 0 ? 0 : hemsOut ? -1 : 1;
    return 10 * group + (hemsOut ? ([0, 2, 1][depth] ?? 0) : ([2, 1, 0][depth] ?? 0));
  };
  const ranked = layers.toSorted((one, other) => rank(one) - rank(other));
  return side === 'inside' ? ranked.at(-1) : ranked[0];
}
