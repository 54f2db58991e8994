import { NM_PER_INCH_64TH, NM_PER_MM, type Nm } from './nanometres.ts';

/** A length for people and scripts: exact millimetres, and inches as a fraction to 1/64. */
export interface ShownLength {
  readonly mm: number;
  readonly inch: string;
}

/** Millimetres as a plain number; exact, since a nanometre is the sixth decimal. */
export const inMm = (length: Nm): number => length / NM_PER_MM;

/**
 * Inches as makers read them: `1 3/4`, `1/16`, `0`. A value that is not a whole number of 64ths is
 * rounded to the nearest and says so: `≈ 1 3/4`.
 */
export function inInches(length: Nm): string {
  const sixtyFourths = Math.round(Math.abs(length) / NM_PER_INCH_64TH);
  const about = sixtyFourths * NM_PER_INCH_64TH === Math.abs(length) ? '' : '≈ ';
  const sign = length < 0 ? '-' : '';
  const whole = Math.floor(sixtyFourths / 64);
  let numerator = sixtyFourths % 64;
  let denominator = 64;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  const fraction = numerator === 0 ? '' : `${numerator}/${denominator}`;
  const digits = [whole === 0 && fraction !== '' ? '' : `${whole}`, fraction].filter(Boolean).join(' ');
  return `${about}${sign}${digits}`;
}

/** Both ways of writing a length, as replies give it. */
export const showLength = (length: Nm): ShownLength => ({ mm: inMm(length), inch: inInches(length) });

/**
 * One line for sentences: `1 3/4 in (44.45 mm)`, or `44.45 mm (1 3/4 in)` where the inch fraction is exact, else
 * `44 mm`; millimetres to 2 decimals.
 */
export function describeLength(length: Nm, measure: 'metric' | 'inch'): string {
  // rounded from whole nanometres: a float's last digit would turn 3.175 into 3.17
  const metric = `${Math.round(length / 10_000) / 100} mm`;
  const imperial = `${inInches(length)} in`;
  if (measure === 'inch') return `${imperial} (${metric})`;
  return length % NM_PER_INCH_64TH === 0 ? `${metric} (${imperial})` : metric;
}

/** A length as a spec would write it: the inch fraction where that is exact and asked for, else millimetres. */
export function writeLength(length: Nm, measure: 'metric' | 'inch'): string {
  const exactInch = length % NM_PER_INCH_64TH === 0;
  return measure === 'inch' && exactInch ? `${inInches(length)} in` : `${inMm(length)} mm`;
}

/** Square millimetres of a rectangle, for comparing sheets. */
export const areaMm2 = (width: Nm, height: Nm): number => inMm(width) * inMm(height);

/** The same for an estimate: `about 9 mm`. */
export const describeEstimate = (length: Nm, measure: 'metric' | 'inch'): string =>
  `about ${describeLength(length, measure).replace('≈ ', '')}`;

/** Metres to three decimals, for what is longer than one length may be. */
export const inMetres = (length: number): number => Number((length / NM_PER_MM / 1000).toFixed(3));
