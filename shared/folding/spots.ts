import { covers, type FlatFace } from './flat-faces.ts';

/** A small piece of the folded form within which the layers are the same. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  /** Left and right side of the cell that it is in. */
  readonly left: number;
  readonly right: number;
  /** Square millimetres that it stands for. */
  readonly area: number;
  /** The faces there, from the lowest layer to the one nearest to the viewer. */
  readonly stack: readonly FlatFace[];
}

/** The middles of the four triangles into which its diagonals cut a cell, as shares of its width and height. */
const triangles = [
  [1 / 2, 1 / 6],
  [5 / 6, 1 / 2],
  [1 / 2, 5 / 6],
  [1 / 6, 1 / 2],
] as const;

/**
 * Looks through the layers everywhere: the form is cut at every corner's x and y, and each cell along its
 * diagonals, so that folds along the axes are met exactly and folds at 45° nearly so.
 */
export function spotsOf(faces: readonly FlatFace[]): readonly Spot[] {
  const byHeight = faces.toSorted((one, other) => one.height - other.height);
  const corners = faces.flatMap((face) => face.corners);
  const columns = stops(corners.map(({ x }) => x));
  const rows = stops(corners.map(({ y }) => y));
  const spots: Spot[] = [];
  for (const [column, left] of columns.slice(0, -1).entries()) {
    const width = (columns[column + 1] ?? left) - left;
    const there = byHeight.filter((face) => face.left < left + width && face.right > left);
    for (const [row, top] of rows.slice(0, -1).entries()) {
      const height = (rows[row + 1] ?? top) - top;
      const area = (width * height) / 4e12;
      for (const [across, down] of triangles) {
        const [x, y] = [left + width * across, top + height * down];
        const stack = there.filter((face) => covers(face, x, y));
        if (stack.length > 0) spots.push({ x, y, left, right: left + width, area, stack });
      }
    }
  }
  return spots;
}

/** Different values in ascending order; what differs by less than a micrometre is one. */
function stops(values: readonly number[]): readonly number[] {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted.filter((value, index) => index === 0 || value - (sorted[index - 1] ?? value) > 1000);
}
