import type { Bounds } from '../geometry/bounds.ts';
import { NM_PER_CM, NM_PER_INCH, NM_PER_MM } from '../lengths/nanometres.ts';
import type { Attribute } from './basic-shapes.ts';
import { numbersIn } from './numbers.ts';
import { quoted, Refused } from './refused.ts';

/** How large a drawing says that it is. */
export interface ViewSize {
  /** Nanometres of one user unit; nothing where the file does not tell. */
  readonly unit: number | undefined;
  /** What viewers show, in user units; nothing where that is open. */
  readonly shown: Bounds | undefined;
}

/** Nanometres of the absolute units (CSS Values and Units 3: 1 in = 2.54 cm = 96 px = 72 pt = 6 pc). */
const nmPerUnit: ReadonlyMap<string, number> = new Map([
  ['mm', NM_PER_MM],
  ['cm', NM_PER_CM],
  ['in', NM_PER_INCH],
  ['pt', NM_PER_INCH / 72],
  ['pc', NM_PER_INCH / 6],
  ['px', NM_PER_INCH / 96],
  ['', NM_PER_INCH / 96],
]);

const lengthForm = /^([+]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?)\s*([A-Za-z%]*)$/u;

/** The size that the root element gives. Throws {@link Refused}. */
export function viewSizeOf(attribute: Attribute): ViewSize {
  const width = lengthOf(attribute, 'width');
  const height = lengthOf(attribute, 'height');
  checkAspect(attribute('preserveAspectRatio'));
  const viewBox = attribute('viewBox');
  if (viewBox === undefined) {
    const px = NM_PER_INCH / 96;
    const whole = width !== undefined && height !== undefined;
    return {
      unit: width === undefined && height === undefined ? undefined : px,
      shown: whole ? { left: 0, top: 0, right: width / px, bottom: height / px } : undefined,
    };
  }
  const [left, top, across, along, ...more] = numbersIn(viewBox, 'the viewBox');
  if (
    left === undefined ||
    top === undefined ||
    !across ||
    !along ||
    across < 0 ||
    along < 0 ||
    more.length > 0
  )
    throw new Refused(
      `the viewBox is ${quoted(viewBox)}`,
      'give x, y, width and height, the last two above 0',
    );
  // of two scales the smaller one holds: all of the viewBox is shown (preserveAspectRatio="xMidYMid meet")
  const scales = [width && width / across, height && height / along].filter((scale) => scale !== undefined);
  return {
    unit: scales.length > 0 ? Math.min(...scales) : undefined,
    shown: { left, top, right: left + across, bottom: top + along },
  };
}

function lengthOf(attribute: Attribute, name: string): number | undefined {
  const text = attribute(name)?.trim();
  if (text === undefined) return undefined;
  const [, digits = '', unit = '?'] = lengthForm.exec(text) ?? [];
  const nm = Number(digits) * (nmPerUnit.get(unit) ?? Number.NaN);
  if (nm > 0 && Number.isFinite(nm)) return nm;
  throw new Refused(
    `the ${name} of the <svg> is ${quoted(text)}`,
    `give a length in mm, cm, in, pt, pc or px, or leave it out and give the artwork’s ${name} in the spec`,
  );
}

function checkAspect(text: string | undefined): void {
  if (text === undefined || /^\s*x(?:Min|Mid|Max)Y(?:Min|Mid|Max)(?:\s+meet)?\s*$/u.test(text)) return;
  throw new Refused(
    `preserveAspectRatio is ${quoted(text)}, which would stretch or hide parts`,
    'leave it out, and let the viewBox have the proportions of width and height',
  );
}
