import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { withUnits } from '../../shared/lengths/length-schema.ts';
import { paperGrades } from '../../shared/paper/basis-weight.ts';
import { caliperOf, DEFAULT_CALIPER, paperThickness } from '../../shared/paper/paper-thickness.ts';

const stock = withUnits(paperThickness);
const read = (input: unknown) => caliperOf(stock.parse(input));

describe('how thick a paper is', () => {
  it('is what was measured, whatever else is known', () => {
    expect(read({ caliper: '0.25 mm', grammage: 300, basisWeight: { pounds: 65, grade: 'cover' } })).toEqual({
      caliper: 250_000,
      from: 'measured',
      why: 'the caliper is given',
    });
    expect(read({ units: 'in', caliper: 0.01 }).caliper).toBe(254_000);
  });

  it('follows from grammage and bulk', () => {
    // 200 x 1.15 = 230 µm
    expect(read({ grammage: 200, bulk: 1.15 })).toEqual({
      caliper: 230_000,
      from: 'grammage',
      why: '200 g/m² with a bulk of 1.15 cm³/g',
    });
  });

  it('follows from grammage and the usual bulk, which it names', () => {
    // 216 x 1.3 = 280.8 µm; 90 / 0.75 = 120 µm
    expect(read({ grammage: 216 })).toEqual({
      caliper: 280_800,
      from: 'grammage',
      why: '216 g/m² with a bulk of 1.3 cm³/g, usual for uncoated card (common practice)',
    });
    expect(read({ grammage: 90 })).toMatchObject({ caliper: 120_000 });
    expect(read({ grammage: 90 }).why).toContain('JCP A55');
  });

  it('follows from a US basis weight', () => {
    // 110 lb index: 198.8754 g/m² / 0.87 = 228.592 µm
    const index = read({ basisWeight: { pounds: 110, grade: 'index' } });
    expect(index.from).toBe('basis weight');
    expect(Math.abs(index.caliper - 228_592)).toBeLessThan(10);
    expect(index.why).toMatch(
      /^110 lb index is 198\.88 g\/m², with a bulk of 1\.15 cm³\/g, usual for index/u,
    );
    // 65 lb cover: 175.7674 g/m² x 1.4 = 246.074 µm
    const cover = read({ basisWeight: { pounds: 65, grade: 'cover' }, bulk: 1.4 });
    expect(Math.abs(cover.caliper - 246_074)).toBeLessThan(10);
    expect(cover.why).toBe('65 lb cover is 175.77 g/m², with a bulk of 1.4 cm³/g');
  });

  it('counts the grammage before the basis weight', () => {
    expect(read({ grammage: 90, basisWeight: { pounds: 65, grade: 'cover' } })).toMatchObject({
      caliper: 120_000,
      from: 'grammage',
    });
  });

  it.each([[{}], [{ bulk: 1.3 }]])('%j says nothing: 0.3 mm, and how to measure', (input) => {
    const assumed = read(input);
    expect(assumed).toMatchObject({ caliper: 300_000, from: 'default' });
    expect(assumed.why).toContain('common practice');
    expect(assumed.why).toContain('measure ten sheets');
    expect(DEFAULT_CALIPER).toBe(300_000);
  });

  it.each([
    [{ caliper: '0 mm' }, 'caliper'],
    [{ caliper: 0.25 }, 'caliper'],
    [{ grammage: 0 }, 'grammage'],
    [{ grammage: '216' }, 'grammage'],
    [{ grammage: 2001 }, 'grammage'],
    [{ bulk: 0 }, 'bulk'],
    [{ bulk: 5.1 }, 'bulk'],
    [{ basisWeight: { pounds: 65, grade: 'card' } }, 'basisWeight.grade'],
  ])('%j is refused', (input, path) => {
    expect(stock.safeParse(input).error?.issues.map((issue) => issue.path.join('.'))).toEqual([path]);
  });

  it('is a whole number of nanometres above zero, for every paper', () => {
    const number = (min: number, max: number) =>
      fc.option(fc.double({ min, max, noNaN: true }), { nil: undefined });
    const weight = fc.option(
      fc.record({
        pounds: fc.double({ min: 1, max: 1000, noNaN: true }),
        grade: fc.constantFrom(...paperGrades),
      }),
      { nil: undefined },
    );
    fc.assert(
      fc.property(number(5, 2000), weight, number(0.3, 5), (grammage, basisWeight, bulk) => {
        const { caliper, why } = read({ grammage, basisWeight, bulk });
        expect(Number.isSafeInteger(caliper)).toBe(true);
        expect(caliper).toBeGreaterThan(0);
        expect(why).not.toMatch(/NaN|undefined/u);
      }),
    );
  });

  it('has a contract that a request can be written from', () => {
    const schema = z.toJSONSchema(z.strictObject(paperThickness), { io: 'input' });
    expect(Object.keys(schema.properties ?? {})).toEqual(['caliper', 'grammage', 'basisWeight', 'bulk']);
    expect(schema.required ?? []).toEqual([]);
    expect(JSON.stringify(schema)).not.toContain('readOnly');
  });
});
