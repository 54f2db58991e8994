import { quoted, Refused } from './refused.ts';

/** No drawing for a cutter has coordinates beyond this, in user units: at 0.001 mm a unit it is a metre. */
export const MOST_COORDINATE = 1e6;

const number = /[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?/uy;
const separator = /\s*,\s*|\s*/uy;

/** A number within what a drawing can have. */
export function checked(value: number, where: string): number {
  if (Math.abs(value) <= MOST_COORDINATE) return value;
  throw new Refused(
    `${where} has the number ${Number.isFinite(value) ? value.toPrecision(3) : 'infinity'}`,
    `keep numbers within ±${MOST_COORDINATE}`,
  );
}

/** Numbers parted by spaces or single commas, as attributes list them. Throws {@link Refused}. */
export function numbersIn(text: string, where: string): number[] {
  const source = text.trim();
  const numbers: number[] = [];
  let at = 0;
  while (at < source.length) {
    number.lastIndex = at;
    const match = number.exec(source)?.[0];
    if (match === undefined)
      throw new Refused(`${where} has ${quoted(source.slice(at))}, which is not a number`, plain);
    numbers.push(checked(Number(match), where));
    separator.lastIndex = at + match.length;
    at = separator.lastIndex + (separator.exec(source)?.[0].length ?? 0);
    if (at === source.length && source.endsWith(',')) throw new Refused(`${where} ends in a comma`, plain);
  }
  return numbers;
}

/** One number, perhaps with the unit px. Throws {@link Refused}. */
export function numberIn(text: string, where: string): number {
  const [value, ...more] = numbersIn(text.trim().replace(/px$/u, ''), where);
  if (value === undefined || more.length > 0)
    throw new Refused(`${where} is ${quoted(text)}, which is not one number`, plain);
  return value;
}

const plain = 'write plain numbers without units or percentages';
