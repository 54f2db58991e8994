/** A point in nanometres: x right, y down, z toward the viewer with the inside face up. */
export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * A rigid motion of space, rows of a 3 × 4 matrix: x' = m[0]·x + m[1]·y + m[2]·z + m[3], and so on. Points
 * are columns: the motion that is done later stands on the left.
 */
export type Motion = readonly number[];

export const still: Motion = Object.freeze([1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0]);

const at = (m: Motion, index: number): number => m[index] ?? 0;

/** Where a motion takes a point. */
export const carry = (m: Motion, { x, y, z }: Point3): Point3 => ({
  x: at(m, 0) * x + at(m, 1) * y + at(m, 2) * z + at(m, 3),
  y: at(m, 4) * x + at(m, 5) * y + at(m, 6) * z + at(m, 7),
  z: at(m, 8) * x + at(m, 9) * y + at(m, 10) * z + at(m, 11),
});

/** The motion that does `first`, then `then`. */
export function after(then: Motion, first: Motion): Motion {
  const result: number[] = new Array(12);
  for (let row = 0; row < 12; row += 4) {
    const [a, b, c] = [at(then, row), at(then, row + 1), at(then, row + 2)];
    for (let column = 0; column < 4; column++) {
      result[row + column] = a * at(first, column) + b * at(first, column + 4) + c * at(first, column + 8);
    }
    result[row + 3] = at(result, row + 3) + at(then, row + 3);
  }
  return result;
}

/** Sine and cosine of whole degrees, exact at right angles. */
function turn(degrees: number): { sin: number; cos: number } {
  const right = { 0: [0, 1], 90: [1, 0], 180: [0, -1], [-90]: [-1, 0], [-180]: [0, -1] }[degrees];
  const [sin, cos] = right ?? [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
  return { sin: sin ?? 0, cos: cos ?? 1 };
}

/**
 * The turn about the line from `p` to `q` in the plane z = 0 that lifts what lies to the right of it, as
 * seen walking from `p` to `q` with y down, toward the viewer by `degrees`. Rodrigues' formula.
 */
export function hinge(p: { x: number; y: number }, q: { x: number; y: number }, degrees: number): Motion {
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  const [u, v] = [(q.x - p.x) / length, (q.y - p.y) / length];
  const { sin, cos } = turn(degrees);
  const rest = 1 - cos;
  const [a, b, c] = [cos + u * u * rest, u * v * rest, v * sin];
  const [d, e, f] = [b, cos + v * v * rest, -u * sin];
  const [g, h] = [-c, -f];
  const [tx, ty, tz] = [p.x - a * p.x - b * p.y, p.y - d * p.x - e * p.y, -g * p.x - h * p.y];
  return [a, b, c, tx, d, e, f, ty, g, h, cos, tz];
}
