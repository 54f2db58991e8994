import { covers, type FlatFace } from './flat-faces.ts';

/** A small piece of the folded form within which the layers are the same. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  /** Sides of the cell that it is in. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Square millimetres that it stands for. */
  readonly area: number;
  /** The faces there, from the lowest layer to the one nearest to the viewer. */
  readonly stack: readonly FlatFace[];
}

/** Corners that are no further apart than this, in nanometres, are one. */
const ONE = 1000;

/** The middles of the four triangles into which its diagonals cut a cell, as shares of its width and height. */
const triangles = [
  [1 / 2, 1 / 6],
  [5 / 6, 1 / 2],
  [1 / 2, 5 / 6],
  [1 / 6, 1 / 2],
] as const;

/**
 * Looks through the layers everywhere: the form is cut at every corner's x and y. Where a cell is crossed by a
 * slanting edge it is cut along its diagonals too, so that folds along the axes are met exactly and folds at 45°
 * nearly so.
 */
export function spotsOf(faces: readonly FlatFace[]): readonly Spot[] {
  const byHeight = faces.toSorted((one, other) => one.height - other.height);
  const boxes = new Set(faces.filter(isBox));
  const corners = faces.flatMap((face) => face.corners);
  const columns = stops(corners.map(({ x }) => x));
  const rows = stops(corners.map(({ y }) => y));
  const spots: Spot[] = [];
  for (let column = 0; column + 1 < columns.length; column++) {
    const [left, right] = [columns[column] ?? 0, columns[column + 1] ?? 0];
    const inColumn = byHeight.filter((face) => face.left < right - ONE && face.right > left + ONE);
    for (let row = 0; row + 1 < rows.length; row++) {
      const [top, bottom] = [rows[row] ?? 0, rows[row + 1] ?? 0];
      const there = inColumn.filter((face) => face.top < bottom - ONE && face.bottom > top + ONE);
      if (there.length === 0) continue;
      const [width, height] = [right - left, bottom - top];
      const whole = (width * height) / 1e12;
      if (there.every((face) => boxes.has(face))) {
        const [x, y] = [left + width / 2, top + height / 2];
        spots.push({ x, y, left, right, top, bottom, area: whole, stack: there });
        continue;
      }
      for (const [across, down] of triangles) {
        const [x, y] = [left + width * across, top + height * down];
        const stack = there.filter((face) => boxes.has(face) || covers(face, x, y));
        if (stack.length > 0) spots.push({ x, y, left, right, top, bottom, area: whole / 4, stack });
      }
    }
  }
  return spots;
}

/** Whether a face is an upright rectangle, which fills every cell that it reaches into. */
const isBox = ({ corners, left, right, top, bottom }: FlatFace): boolean =>
  corners.length === 4 &&
  corners.every(({ x, y }) => (x === left || x === right) && (y === top || y === bottom));

/** Different values in ascending order; what differs by no more than {@link ONE} is one. */
function stops(values: readonly number[]): readonly number[] {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted.filter((value, index) => index === 0 || value - (sorted[index - 1] ?? value) > ONE);
}
