import type { Measure } from '../lengths/length-schema.ts';
import { inch, mm, type Nm } from '../lengths/nanometres.ts';

/** What a size is used as. */
export const sizeKinds = ['card', 'envelope', 'sheet'] as const;
export type SizeKind = (typeof sizeKinds)[number];

/** How far a size can be relied on; a size by custom may differ between makers, so measure one. */
export const authorities = ['standard', 'trade custom', 'common practice'] as const;
export type Authority = (typeof authorities)[number];

/** One published size, upright: `width` is never more than `height`. An envelope's is its outside. */
export interface Size {
  readonly id: string;
  readonly title: string;
  readonly kinds: readonly SizeKind[];
  readonly width: Nm;
  readonly height: Nm;
  /** The system that the size is defined in. */
  readonly measure: Measure;
  readonly source: string;
  readonly authority: Authority;
  /** On an envelope: ids of the cards that it is sold for, lying flat in it. */
  readonly takes?: readonly string[];
  /** A card that nobody folds. */
  readonly flat?: true;
}

type Measured = Pick<Size, 'width' | 'height' | 'measure'>;

/** Width and height in millimetres. */
export const metric = (width: number, height: number): Measured => ({
  width: mm(width),
  height: mm(height),
  measure: 'metric',
});

/** Width and height in inches. */
export const imperial = (width: number, height: number): Measured => ({
  width: inch(width),
  height: inch(height),
  measure: 'inch',
});

/** The list of media sizes that most rows were read from. */
export const PWG = 'IEEE-ISTO PWG 5101.1';
