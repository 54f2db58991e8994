import { z } from 'zod';
import { LONGEST, type Nm } from './nanometres.ts';
import {
  numberToNanometres,
  parseLength,
  toNanometres,
  type UnitName,
  unitNames,
  type WrittenLength,
} from './parse-length.ts';
import { inMm } from './show-length.ts';

/** What a length may be, in nanometres. */
interface Limits {
  readonly least: Nm;
  readonly most: Nm;
}

/** A length inside a spec that has been read, but whose bare numbers still wait for the spec's `units`. */
export class PendingLength {
  readonly written: WrittenLength | number;
  readonly limits: Limits;
  constructor(written: WrittenLength | number, limits: Limits) {
    this.written = written;
    this.limits = limits;
  }
}

/** A value read by a schema, with every pending length settled to whole nanometres. */
export type Settled<T> = T extends PendingLength
  ? Nm
  : T extends readonly (infer Item)[]
    ? readonly Settled<Item>[]
    : T extends object
      ? { readonly [Key in keyof T]: Settled<T[Key]> }
      : T;

/** Which system a spec thinks in; it decides the default grid and the order in which both are shown. */
export type Measure = 'metric' | 'inch';

const lengthInput = z.union([z.string(), z.number()], {
  error: ({ input }) =>
    input === undefined
      ? 'is missing: expected a length, as a string with its unit or a number'
      : `a length is a string with its unit or a number, not ${nameOf(input)}`,
});

const nameOf = (input: unknown): string =>
  input === null
    ? 'null'
    : Array.isArray(input)
      ? 'a list'
      : typeof input === 'object'
        ? 'an object'
        : `a ${typeof input}`;

// The examples belong to the input: what is said about the transformed value is left out of its JSON Schema.
const pending = (limits: Limits, examples: readonly string[]) =>
  lengthInput.meta({ examples: [...examples] }).transform((input, context) => {
    if (typeof input === 'number') return new PendingLength(input, limits);
    const parsed = parseLength(input);
    if (parsed.ok) return new PendingLength(parsed.value, limits);
    context.addIssue({ code: 'custom', message: parsed.message, params: { remedy: parsed.remedy } });
    return z.NEVER;
  });

const lengthText =
  'A string with its unit: mm, cm, in or the inch sign, as decimals or fractions; or a bare number in the spec’s `units`.';

/** A length greater than zero, as a schema; settle it with {@link withUnits}. */
export const length = pending({ least: 1, most: LONGEST }, ['5 1/8 in', '130 mm']).meta({
  description: lengthText,
});

/** A length that may be zero. */
export const lengthOrZero = pending({ least: 0, most: LONGEST }, ['0 mm', '1/32 in']).meta({
  description: `${lengthText} May be 0.`,
});

/** A length from `least` to `most` nanometres. */
export const lengthBetween = (least: Nm, most: Nm) =>
  pending({ least, most }, [`${inMm(least)} mm`]).meta({
    description: `${lengthText} From ${inMm(least)} mm to ${inMm(most)} mm.`,
  });

const addUnit = 'add one, as in "130 mm" or "5 1/8 in"';

interface Settling {
  readonly units: UnitName | undefined;
  readonly seen: { inch: boolean; metric: boolean };
  /** What mends a length without a unit. */
  readonly addUnit: string;
  readonly fail: (path: (string | number)[], message: string, remedy: string) => void;
}

function settleLength(length: PendingLength, path: (string | number)[], to: Settling): Nm {
  const own = typeof length.written === 'number' ? undefined : length.written.unit;
  const unit = own ?? to.units;
  if (unit === undefined) {
    to.fail(path, 'the length has no unit', to.addUnit);
    return 0;
  }
  to.seen[unit === 'in' ? 'inch' : 'metric'] = true;
  const settled =
    typeof length.written === 'number'
      ? numberToNanometres(length.written, unit)
      : toNanometres(length.written, unit);
  if (!settled.ok) {
    to.fail(path, settled.message, settled.remedy);
    return 0;
  }
  const { least, most } = length.limits;
  if (settled.value === 0 && least > 0)
    to.fail(path, 'the length is zero', 'give a length greater than zero');
  else if (settled.value < least || settled.value > most)
    to.fail(
      path,
      `the length is ${inMm(settled.value)} mm`,
      `give a length from ${inMm(least)} mm to ${inMm(most)} mm`,
    );
  return settled.value;
}

function settle(value: unknown, path: (string | number)[], to: Settling): unknown {
  if (value instanceof PendingLength) return settleLength(value, path, to);
  if (Array.isArray(value)) return value.map((item, index) => settle(item, [...path, index], to));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [key, settle(item, [...path, key], to)]),
  );
}

/**
 * A strict object whose lengths may be bare numbers in the object's own `units`.
 * Reading it settles every length to nanometres and adds `measure`: inch when `units` is `in` or, without
 * `units`, when every length that names a unit is in inches; metric otherwise.
 * @param usual the measure of an object in which no length names a unit
 */
export function withUnits<Shape extends z.core.$ZodLooseShape>(
  shape: Shape,
  usual: (value: unknown) => Measure = () => 'metric',
) {
  const object = z.strictObject({
    units: z
      .enum(unitNames)
      .optional()
      .meta({ description: 'The unit of every length that is given without one.' }),
    ...shape,
  });
  return object.transform((value, context) => {
    const seen = { inch: false, metric: false };
    const { units } = value as { units?: UnitName };
    const settled = settle(value, [], {
      units,
      seen,
      addUnit: `${addUnit}, or set "units" for the whole spec`,
      fail: (path, message, remedy) =>
        context.addIssue({ code: 'custom', path, message, params: { remedy }, input: value }),
    });
    const written = seen.inch || seen.metric ? (seen.metric ? 'metric' : 'inch') : usual(settled);
    const measure: Measure = units === undefined ? written : units === 'in' ? 'inch' : 'metric';
    return { ...(settled as object), measure } as Settled<typeof value> & {
      readonly measure: Measure;
    };
  });
}

/** A value that stands alone, so that each of its lengths has to name its unit. Reading it settles them to nanometres. */
export const withOwnUnits = <Schema extends z.core.$ZodType>(schema: Schema) =>
  z.pipe(
    schema,
    z.transform((value: z.output<Schema>, context) => {
      const seen = { inch: false, metric: false };
      return settle(value, [], {
        units: undefined,
        seen,
        addUnit,
        fail: (path, message, remedy) =>
          context.issues.push({ code: 'custom', path, message, params: { remedy }, input: value }),
      }) as Settled<z.output<Schema>>;
    }),
  );
