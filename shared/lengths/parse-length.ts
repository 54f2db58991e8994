import { LONGEST, NM_PER_CM, NM_PER_INCH, NM_PER_MM, type Nm } from './nanometres.ts';

/** The units that a length may be written in. */
export const unitNames = ['mm', 'cm', 'in'] as const;
export type UnitName = (typeof unitNames)[number];

export const nmPerUnit: Readonly<Record<UnitName, number>> = {
  mm: NM_PER_MM,
  cm: NM_PER_CM,
  in: NM_PER_INCH,
};

/** A length as written: an exact fraction of a unit, or of no unit yet when only a number was given. */
export interface WrittenLength {
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly unit: UnitName | undefined;
}

export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly message: string; readonly remedy: string };

// A map, since an object would also answer to the names that it inherits, such as "constructor".
const unitWords: ReadonlyMap<string, UnitName> = new Map([
  ['mm', 'mm'],
  ['cm', 'cm'],
  ['in', 'in'],
  ['inch', 'in'],
  ['inches', 'in'],
  ['"', 'in'],
  ['″', 'in'],
  ['”', 'in'],
  ["''", 'in'],
]);

// Unicode's vulgar fractions decompose under NFKC to digits around U+2044, the fraction slash.
const vulgarFraction = /[\u00bc-\u00be\u2150-\u215e\u2189]/gu;

// A hyphen joins a mixed number only without spaces around it: "5 - 1/8" could be meant as a subtraction.
// 24 decimals hold every digit that a script prints for a number above 0.000001.
const numberForm =
  /^(?:(?<whole>\d{1,15})(?:\s+|-)(?<num>\d{1,15})\/(?<den>\d{1,15})|(?<onlyNum>\d{1,15})\/(?<onlyDen>\d{1,15})|(?<decimal>\d{1,15}(?:\.\d{1,24})?|\.\d{1,24}))$/u;

/** Long enough for any length that a person writes, short enough to bound the work. */
const LONGEST_TEXT = 64;

const example = 'write it like "5 1/8 in", "5.125 in", "130 mm" or "13 cm"';

const refuse = (message: string, remedy = example): Parsed<never> => ({ ok: false, message, remedy });

const quoted = (text: string): string => JSON.stringify(text.length > 40 ? `${text.slice(0, 40)}…` : text);

/**
 * Reads a length as makers write it: whole numbers, decimals, fractions, mixed numbers with a space or a
 * hyphen, unicode fractions; `mm`, `cm`, `in`, `inch`, `inches` or an inch sign. No unit is guessed.
 * @param text for example `5-1/8"`, `5 ⅛ in`, `130 mm`
 * @returns the exact value, or why the text is not a length and what to write instead
 */
export function parseLength(text: string): Parsed<WrittenLength> {
  if (text.length > LONGEST_TEXT) return refuse(`${quoted(text)} is too long to be a length`);
  const plain = text
    .replace(/(?<=\d)(?=[\u00bc-\u00be\u2150-\u215e\u2189])/gu, ' ')
    .replace(vulgarFraction, (sign) => `${sign.normalize('NFKC')} `)
    .replaceAll('\u2044', '/')
    .replace(/\s*\/\s*/gu, '/')
    .trim();
  if (plain === '') return refuse('the length is empty');
  if (/^[-\u2212]/u.test(plain))
    return refuse(`${quoted(text)} is negative`, 'give a length greater than zero');
  if (/^[\d.]+e[-+\u2212]?\d/iu.test(plain))
    return refuse(`${quoted(text)} has an exponent`, 'write the number out, since exponents are not read');
  const parts = /^(?<digits>[\d.,/\s-]*?)\s*(?<unit>[^\d.,/\s-].*)?$/u.exec(plain);
  if (!parts?.groups) return refuse(`${quoted(text)} is not a length`);
  const digits = parts.groups.digits ?? '';
  const word = parts.groups.unit?.trim().toLowerCase();
  if (digits.includes(','))
    return refuse(`${quoted(text)} has a comma`, 'write the decimal mark as a point and no thousands marks');
  const unit = word === undefined ? undefined : unitWords.get(word);
  if (word !== undefined && unit === undefined) {
    return digits === ''
      ? refuse(`${quoted(text)} is not a length`)
      : refuse(`${quoted(word)} is not a unit that hemfold reads`, 'use mm, cm, in or the inch sign');
  }
  const match = numberForm.exec(digits)?.groups;
  if (!match) return refuse(`${quoted(text)} is not a length`);
  const fraction = toFraction(match);
  if (fraction.denominator === 0n) return refuse(`${quoted(text)} divides by zero`);
  return { ok: true, value: { ...fraction, unit } };
}

function toFraction(match: Record<string, string | undefined>): { numerator: bigint; denominator: bigint } {
  if (match.decimal !== undefined) {
    const [whole = '', decimals = ''] = match.decimal.split('.');
    return { numerator: BigInt(whole + decimals), denominator: 10n ** BigInt(decimals.length) };
  }
  const numerator = BigInt(match.num ?? match.onlyNum ?? 0);
  const denominator = BigInt(match.den ?? match.onlyDen ?? 1);
  return { numerator: BigInt(match.whole ?? 0) * denominator + numerator, denominator };
}

/**
 * A written length in whole nanometres, rounded to the nearest (halves up).
 * Every multiple of 1/64 in and of 0.000001 mm is exact.
 * @param written from {@link parseLength}
 * @param unit the unit for a number that has none of its own
 */
export function toNanometres(written: WrittenLength, unit: UnitName): Parsed<Nm> {
  const scale = BigInt(nmPerUnit[written.unit ?? unit]);
  const scaled = written.numerator * scale;
  const nearest = (2n * scaled + written.denominator) / (2n * written.denominator);
  if (nearest > BigInt(LONGEST))
    return refuse('the length is more than 10 m', 'give a length that a sheet of paper can have');
  return { ok: true, value: Number(nearest) };
}

/** A bare number in the given unit, in whole nanometres, rounded to the nearest. */
export function numberToNanometres(value: number, unit: UnitName): Parsed<Nm> {
  const nm = value * nmPerUnit[unit];
  if (!Number.isFinite(nm) || nm > LONGEST)
    return refuse('the length is more than 10 m', 'give a length that a sheet of paper can have');
  if (nm < 0) return refuse('the length is negative', 'give a length greater than zero');
  return { ok: true, value: Math.round(nm) };
}
