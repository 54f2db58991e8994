import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { length, lengthOrZero, withUnits } from '../../shared/lengths/length-schema.ts';

const sheet = withUnits({
  width: length,
  gap: lengthOrZero.optional(),
  folds: z.array(z.strictObject({ at: length })).optional(),
  name: z.string().optional(),
  count: z.number().optional(),
});

/** Every issue as path, message and remedy. */
const issues = (input: unknown) => {
  const { error } = sheet.safeParse(input);
  return (error?.issues ?? []).map((issue) => [
    issue.path.join('.'),
    issue.message,
    issue.code === 'custom' ? issue.params?.remedy : undefined,
  ]);
};

describe('withUnits settles every length', () => {
  it('reads lengths with their own unit', () => {
    expect(sheet.parse({ width: '5 1/8 in', gap: '2 mm' })).toEqual({
      width: 130_175_000,
      gap: 2_000_000,
      measure: 'metric',
    });
  });

  it('reads bare numbers and unitless text in the units of the whole', () => {
    expect(sheet.parse({ units: 'in', width: 5.125, gap: '1/2', folds: [{ at: '10 mm' }] })).toEqual({
      units: 'in',
      width: 130_175_000,
      gap: 12_700_000,
      folds: [{ at: 10_000_000 }],
      measure: 'inch',
    });
  });

  it('leaves text and numbers that are no lengths alone', () => {
    expect(sheet.parse({ width: '1 mm', name: '5 mm', count: 3 })).toMatchObject({ name: '5 mm', count: 3 });
  });

  it.each([
    [{ width: '1 in' }, 'inch'],
    [{ width: '1 in', gap: '2"' }, 'inch'],
    [{ width: '1 in', gap: '2 mm' }, 'metric'],
    [{ width: '1 cm' }, 'metric'],
    [{ units: 'in', width: '1 cm' }, 'inch'],
    [{ units: 'mm', width: '1 in' }, 'metric'],
    [{ units: 'cm', width: 1 }, 'metric'],
  ] as const)('%j thinks in %s', (input, measure) => {
    expect(sheet.parse(input).measure).toBe(measure);
  });

  it('a whole without lengths thinks in metric', () => {
    expect(withUnits({ name: z.string() }).parse({ name: 'x' }).measure).toBe('metric');
  });
});

describe('withUnits says where and why a length is refused', () => {
  const noUnit = [
    'the length has no unit',
    'add one, as in "130 mm" or "5 1/8 in", or set "units" for the whole spec',
  ];
  const zero = ['the length is zero', 'give a length greater than zero'];

  it('a missing unit, by its path, for each place', () => {
    expect(issues({ width: 5, folds: [{ at: '1 mm' }, { at: '2' }] })).toEqual([
      ['width', ...noUnit],
      ['folds.1.at', ...noUnit],
    ]);
  });

  it.each(['0 mm', '0/3 in', '0.0000001 mm'])('a zero where there must be a length: %s', (text) => {
    expect(issues({ width: text })).toEqual([['width', ...zero]]);
  });

  it('a zero is fine where it may be', () => {
    expect(issues({ width: '1 mm', gap: '0 mm' })).toEqual([]);
    expect(sheet.parse({ units: 'mm', width: 1, gap: 0 }).gap).toBe(0);
  });

  it('a length that is none, with what to write instead', () => {
    expect(issues({ width: '5 ft' })).toEqual([
      ['width', '"ft" is not a unit that hemfold reads', 'use mm, cm, in or the inch sign'],
    ]);
  });

  it('a bare number below zero or beyond 10 m', () => {
    expect(issues({ units: 'mm', width: -1 })).toEqual([
      ['width', 'the length is negative', 'give a length greater than zero'],
    ]);
    expect(issues({ units: 'cm', width: 1001 })).toEqual([
      ['width', 'the length is more than 10 m', 'give a length that a sheet of paper can have'],
    ]);
  });

  it.each([
    [null, 'null'],
    [true, 'a boolean'],
    [[], 'a list'],
    [{}, 'an object'],
  ])('%j is no length', (width, name) => {
    expect(issues({ width })).toEqual([
      ['width', `a length is a string with its unit or a number, not ${name}`, undefined],
    ]);
  });

  it('a missing length', () => {
    expect(issues({})).toEqual([
      ['width', 'is missing: expected a length, as a string with its unit or a number', undefined],
    ]);
  });

  it('an unknown member, by its name', () => {
    const { error } = sheet.safeParse({ width: '1 mm', widht: '2 mm' });
    expect(error?.issues).toMatchObject([{ code: 'unrecognized_keys', keys: ['widht'], path: [] }]);
    const nested = sheet.safeParse({ width: '1 mm', folds: [{ at: '1 mm', angle: 3 }] });
    expect(nested.error?.issues).toMatchObject([{ keys: ['angle'], path: ['folds', 0] }]);
  });

  it.each(['ft', 'IN', '', 1])('units that hemfold does not read: %j', (units) => {
    expect(issues({ units, width: 1 }).map(([path]) => path)).toEqual(['units']);
  });
});

describe('the contract of a length', () => {
  it('is a string or a number with a description', () => {
    const schema = z.toJSONSchema(z.strictObject({ width: length }), { io: 'input' });
    expect(schema.properties?.width).toMatchObject({ examples: ['5 1/8 in', '130 mm'] });
    expect(JSON.stringify(schema.properties?.width)).toContain('decimals or fractions');
  });
});
