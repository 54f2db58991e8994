/** Points of PDF in a millimetre: 72 to the inch. */
const POINTS_PER_MM = 72 / 25.4;

/** Millimetres as points. */
export const points = (mm: number): number => mm * POINTS_PER_MM;

/** Papers to print on, in millimetres: ISO 216 A4, and US letter of 8 1/2 by 11 in. */
export const printPapers = Object.freeze({
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
});

export type PrintPaper = keyof typeof printPapers;

/** Kept free on every side, in millimetres: more than any usual printer leaves white. */
export const pageMargin = 12;
