import {
  NM_PER_CM,
  NM_PER_INCH,
  NM_PER_INCH_64TH,
  NM_PER_MM,
  type Nm,
} from '../../shared/lengths/nanometres.ts';

/** A length in a generated spec that is not yet written in any unit. */
export class Length {
  readonly nm: Nm;
  constructor(nm: Nm) {
    this.nm = nm;
  }
}

/** A JSON value in which lengths still wait to be written. */
export type Unspelt =
  | Length
  | string
  | number
  | boolean
  | readonly Unspelt[]
  | { readonly [key: string]: Unspelt | undefined };

export type UnspeltObject = { readonly [key: string]: Unspelt | undefined };

export type SpecUnits = 'mm' | 'cm' | 'in' | undefined;

/** How the lengths of one spec are written: its `units`, and a number that picks a form for each length. */
export interface Spelling {
  readonly units: SpecUnits;
  readonly pick: number;
}

const plain = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  return text.includes('.') ? text.replace(/\.?0+$/u, '') : text;
};

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** A whole number of nanometres as an exact fraction of an inch, without a unit. */
function inchFraction(nm: Nm, joint: ' ' | '-'): string {
  const divisor = gcd(nm, NM_PER_INCH);
  const [numerator, denominator] = [nm / divisor, NM_PER_INCH / divisor];
  const [whole, rest] = [Math.floor(numerator / denominator), numerator % denominator];
  if (rest === 0) return `${whole}`;
  return whole === 0 ? `${rest}/${denominator}` : `${whole}${joint}${rest}/${denominator}`;
}

const nmPerUnit = { mm: NM_PER_MM, cm: NM_PER_CM, in: NM_PER_INCH } as const;

/** Every exact way in which one length could be written. */
function formsOf(nm: Nm, units: SpecUnits): readonly (string | number)[] {
  const millimetres = `${plain(nm / NM_PER_MM, 6)} mm`;
  const metric = [millimetres, millimetres.replace(' ', ''), `${plain(nm / NM_PER_CM, 7)} cm`];
  const inches =
    nm % NM_PER_INCH_64TH === 0
      ? [`${inchFraction(nm, ' ')} in`, `${inchFraction(nm, '-')}"`, `${plain(nm / NM_PER_INCH, 6)} inches`]
      : [`${inchFraction(nm, ' ')} in`];
  return units === undefined ? [...metric, ...inches] : [nm / nmPerUnit[units], ...metric, ...inches];
}

/**
 * A spec as a caller would send it: every length in one of its exact forms, members without a value left
 * out. Two spellings of one spec mean the same.
 */
export function spell(spec: UnspeltObject, { units, pick }: Spelling): Record<string, unknown> {
  let count = 0;
  const write = (value: Unspelt): unknown => {
    if (value instanceof Length) {
      const forms = formsOf(value.nm, units);
      // a small multiplicative walk: neighbouring lengths get different forms
      return forms[(pick + 7 * count++) % forms.length];
    }
    if (Array.isArray(value)) return value.map((item: Unspelt) => write(item));
    if (typeof value !== 'object') return value;
    return Object.fromEntries(
      Object.entries(value as UnspeltObject).flatMap(([key, item]) =>
        item === undefined ? [] : [[key, write(item)]],
      ),
    );
  };
  return { ...(units === undefined ? {} : { units }), ...(write(spec) as Record<string, unknown>) };
}
