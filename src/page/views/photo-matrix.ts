import type { Face } from '../state/photos.ts';

/** An affine map as SVG writes it: x' = a·x + c·y + e, y' = b·x + d·y + f. */
export interface Matrix {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const matrixText = ({ a, b, c, d, e, f }: Matrix): string => `matrix(${[a, b, c, d, e, f].join(' ')})`;

/** The map that does `first`, then `then`. */
export const after = (then: Matrix, first: Matrix): Matrix => ({
  a: then.a * first.a + then.c * first.b,
  b: then.b * first.a + then.d * first.b,
  c: then.a * first.c + then.c * first.d,
  d: then.b * first.c + then.d * first.d,
  e: then.a * first.e + then.c * first.f + then.e,
  f: then.b * first.e + then.d * first.f + then.f,
});

/**
 * Takes the unit square of a photo, y down, to the sheet with its inside face up, in the sheet's own units. The outside
 * print runs mirrored there, as if it were seen through the paper.
 * @param up where the print's up points on the sheet: one of the four directions of its edges
 */
export function photoOnSheet(
  face: Face,
  { width, height }: { readonly width: number; readonly height: number },
  up: { readonly x: number; readonly y: number },
): Matrix {
  const right = face === 'inside' ? { x: -up.y, y: up.x } : { x: up.y, y: -up.x };
  const [a, b, c, d] = [right.x * width, right.y * height, -up.x * width, -up.y * height];
  const startOf = (one: number, other: number): number => -Math.min(0, one) - Math.min(0, other);
  return { a, b, c, d, e: startOf(a, c), f: startOf(b, d) };
}
