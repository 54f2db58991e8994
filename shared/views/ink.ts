import type { LineKind, Paper } from './picture.ts';

export interface Ink {
  readonly colour: string;
  /** Millimetres. */
  readonly width: number;
  /** Lengths of dashes and gaps in millimetres; empty for a continuous line. */
  readonly dashes: readonly number[];
}

const black = '#000000';

/**
 * How each kind of line is drawn: told apart by width and dashes alone, in one colour. Valley dashed, mountain
 * dash-dot: the Yoshizawa-Randlett convention. Widths from ISO 128-2's series.
 */
export const inks: Readonly<Record<LineKind, Ink>> = Object.freeze({
  edge: { colour: black, width: 0.35, dashes: [] },
  score: { colour: '#595959', width: 0.18, dashes: [0.7, 0.7] },
  seam: { colour: black, width: 0.9, dashes: [] },
  contents: { colour: black, width: 0.5, dashes: [4, 1.6] },
  valley: { colour: black, width: 0.9, dashes: [3.2, 1.6] },
  mountain: { colour: black, width: 0.9, dashes: [4.6, 1.5, 0.2, 1.5] },
  slip: { colour: black, width: 0.9, dashes: [0.2, 1.6] },
  measure: { colour: black, width: 0.25, dashes: [] },
});

export interface PaperFill {
  readonly ground: string;
  /** Diagonal lines over the ground. */
  readonly hatch?: { readonly colour: string; readonly width: number; readonly spacing: number };
}

/**
 * The two paper sides differ in tone and in pattern. Sky blue and vermillion of the published palette that
 * people who do not see colour alike can tell apart, the blue mixed with three tenths of white.
 * Source: Okabe & Ito, "Color Universal Design" (2002, revised 2008).
 */
export const papers: Readonly<Record<Paper, PaperFill>> = Object.freeze({
  outside: { ground: '#89CBF0' },
  inside: { ground: '#FFFFFF', hatch: { colour: '#D55E00', width: 0.3, spacing: 2 } },
});

/** Glue and tape: dots on white with an outline, so that it is told from both sides of the paper. */
export const glueInk = Object.freeze({
  ground: '#FFFFFF',
  dots: { colour: black, radius: 0.22, spacing: 0.8 },
  outline: { colour: black, width: 0.3, dashes: [] },
});
