/**
 * Exact lengths. Inside hemfold every length is a whole number of nanometres, held in a plain number:
 * 1/64 in = 396 875 nm and 0.01 mm = 10 000 nm are both whole, so inches and millimetres never drift apart.
 * Source of the inch: 1 yd = 0.9144 m exactly, NBS Circular 572 addendum (1960), so 1 in = 25.4 mm exactly.
 */
export type Nm = number;

export const NM_PER_MM = 1_000_000;
export const NM_PER_CM = 10_000_000;
export const NM_PER_INCH = 25_400_000;

/** 1/64 in, the finest inch fraction that is shown. */
export const NM_PER_INCH_64TH = NM_PER_INCH / 64;

/** No sheet of paper is longer than this; sums of lengths stay far below 2^53 nm. */
export const LONGEST: Nm = 10_000 * NM_PER_MM;

/** Millimetres to the nearest whole nanometre. */
export const mm = (value: number): Nm => Math.round(value * NM_PER_MM);

/** Inches to the nearest whole nanometre; exact for every multiple of 1/64 in. */
export const inch = (value: number): Nm => Math.round(value * NM_PER_INCH);
