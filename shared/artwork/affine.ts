import type { Contour } from '../geometry/contour.ts';
import type { Point } from '../geometry/plane.ts';
import { mapPoints } from '../geometry/walk.ts';
import { checked, numbersIn } from './numbers.ts';
import { quoted, Refused } from './refused.ts';

/** SVG's matrix(a b c d e f): x' = a·x + c·y + e, y' = b·x + d·y + f. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const unmoved: Affine = Object.freeze([1, 0, 0, 1, 0, 0] as const);

/** What `first` and then `then` do. */
export const composed = (then: Affine, first: Affine): Affine => {
  const [a, b, c, d, e, f] = then;
  const [g, h, i, j, k, l] = first;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
};

/** A contour with every point moved; cubics stay cubics under a matrix. */
export const moved = ([a, b, c, d, e, f]: Affine, contour: Contour): Contour =>
  mapPoints(contour, ({ x, y }: Point) => ({
    x: checked(a * x + c * y + e, 'a shape under its transforms'),
    y: checked(b * x + d * y + f, 'a shape under its transforms'),
  }));

const MOST_FUNCTIONS = 32;
const functionForm = /\s*([A-Za-z]+)\s*\(([^()]*)\)\s*,?/uy;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** How many numbers each function takes, and the matrix that they make (SVG 1.1, section 7.6). */
const functions: ReadonlyMap<
  string,
  { readonly counts: readonly number[]; readonly matrix: (n: readonly number[]) => Affine }
> = new Map([
  [
    'matrix',
    { counts: [6], matrix: ([a = 1, b = 0, c = 0, d = 1, e = 0, f = 0]) => [a, b, c, d, e, f] as const },
  ],
  ['translate', { counts: [1, 2], matrix: ([x = 0, y = 0]) => [1, 0, 0, 1, x, y] as const }],
  ['scale', { counts: [1, 2], matrix: ([x = 1, y = x]) => [x, 0, 0, y, 0, 0] as const }],
  [
    'rotate',
    {
      counts: [1, 3],
      matrix: ([degrees = 0, x = 0, y = 0]) => {
        const cos = Math.cos(radians(degrees));
        const sin = Math.sin(radians(degrees));
        return [cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y] as const;
      },
    },
  ],
  ['skewX', { counts: [1], matrix: ([degrees = 0]) => [1, 0, Math.tan(radians(degrees)), 1, 0, 0] as const }],
  ['skewY', { counts: [1], matrix: ([degrees = 0]) => [1, Math.tan(radians(degrees)), 0, 1, 0, 0] as const }],
]);

/** The matrix of a transform attribute. Throws {@link Refused}. */
export function affineIn(text: string, where: string): Affine {
  let result = unmoved;
  let at = 0;
  const source = text.trim();
  for (let count = 0; at < source.length; count++) {
    functionForm.lastIndex = at;
    const match = functionForm.exec(source);
    const [, name = '', list = ''] = match ?? [];
    const known = functions.get(name);
    const numbers = known ? numbersIn(list, where) : [];
    if (!known?.counts.includes(numbers.length) || count === MOST_FUNCTIONS)
      throw new Refused(
        `${where} is ${quoted(source)}, which is not read`,
        `use up to ${MOST_FUNCTIONS} of matrix, translate, scale, rotate, skewX and skewY, with plain numbers`,
      );
    result = composed(result, known.matrix(numbers));
    at = functionForm.lastIndex;
  }
  return result;
}
