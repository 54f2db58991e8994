import { NM_PER_INCH, NM_PER_MM, type Nm } from '../lengths/nanometres.ts';
import { inInches, inMm } from '../lengths/show-length.ts';

/** Millimetres to two decimals, for tables. */
export const inMillimetres = (length: Nm): string => `${Math.round(inMm(length) * 100) / 100}`;

/** A position as a maker finds it on a rule or a board: the nearest mark, and how far that is off. */
export interface MarkedPosition {
  readonly text: string;
  /** Mark less position: positive where the mark lies beyond it. */
  readonly off: Nm;
}

const nearestMark = (length: Nm, step: Nm): Nm => Math.round(length / step) * step;

/** The nearest sixteenth of an inch, the finest mark of usual boards and rules; common practice. */
export function onInchRule(length: Nm): MarkedPosition {
  const mark = nearestMark(length, NM_PER_INCH / 16);
  return { text: inInches(mark), off: mark - length };
}

/** The nearest millimetre. */
export function onMetricRule(length: Nm): MarkedPosition {
  const mark = nearestMark(length, NM_PER_MM);
  return { text: `${mark / NM_PER_MM}`, off: mark - length };
}

/** `exact`, or how far a mark lies beyond (+) or before (−) the position. */
export function offText(off: Nm): string {
  const rounded = Math.round(inMm(off) * 100) / 100;
  if (rounded === 0) return off === 0 ? 'exact' : 'under 0.01 mm';
  return `${rounded > 0 ? '+' : '−'}${Math.abs(rounded)} mm`;
}
