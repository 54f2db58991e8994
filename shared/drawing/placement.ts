import type { Point } from '../geometry/plane.ts';
import { NM_PER_INCH, NM_PER_MM } from '../lengths/nanometres.ts';
import { decimal } from './numbers.ts';

export const nmPerUserUnit = {
  mm: NM_PER_MM,
  '1/96 in': NM_PER_INCH / 96,
  '1/72 in': NM_PER_INCH / 72,
} as const;
export type UserUnit = keyof typeof nmPerUserUnit;

const nmPerRootUnit = { mm: NM_PER_MM, in: NM_PER_INCH, px: NM_PER_INCH / 96 } as const;
export type RootUnit = keyof typeof nmPerRootUnit;

/** How pattern coordinates become the drawing's numbers. */
export interface Placement {
  readonly width: number;
  readonly height: number;
  /** A quarter turn clockwise, to lie as the sheet lies. */
  readonly turned: boolean;
  /** Mirrored left to right, for a sheet that lies with its outside up. */
  readonly mirrored: boolean;
  readonly userUnit: UserUnit;
  readonly rootUnit: RootUnit;
}

/** A point of the pattern as the text `x y` in user units; every line through the point gets the same text. */
export function place(placement: Placement, p: Point): string {
  const { width, height, turned, mirrored, userUnit } = placement;
  const across = turned ? height : width;
  const x = turned ? height - p.y : p.x;
  const y = turned ? p.x : p.y;
  const scale = nmPerUserUnit[userUnit];
  return `${decimal((mirrored ? across - x : x) / scale)} ${decimal(y / scale)}`;
}

/**
 * Width, height and viewBox of the root, with as many decimals as they need (1/16 in has four): a rounded
 * viewBox would stretch everything inside it.
 */
export function rootSize({ width, height, turned, userUnit, rootUnit }: Placement) {
  const [across, down] = turned ? [height, width] : [width, height];
  const real = (value: number) => `${decimal(value / nmPerRootUnit[rootUnit], 6)}${rootUnit}`;
  const user = (value: number) => decimal(value / nmPerUserUnit[userUnit], 6);
  return { width: real(across), height: real(down), viewBox: `0 0 ${user(across)} ${user(down)}` };
}

/** A length in user units as text. */
export const placeLength = ({ userUnit }: Placement, length: number): string =>
  decimal(length / nmPerUserUnit[userUnit]);
