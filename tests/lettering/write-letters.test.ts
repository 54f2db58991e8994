import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../shared/geometry/area.ts';
import { boundsOf } from '../../shared/geometry/bounds.ts';
import { mm, NM_PER_MM } from '../../shared/lengths/nanometres.ts';
import { letteringSpec } from '../../shared/lettering/lettering-spec.ts';
import { writeLetters } from '../../shared/lettering/write-letters.ts';
import { CALIPER, carriedFont, write } from '../support/fonts.ts';

const plain = await carriedFont('plain');
const script = await carriedFont('script');

const none = { bridges: 'none' } as const;
const widthOf = (...[font, spec]: Parameters<typeof write>): number => {
  const { left, right } = boundsOf(write(font, spec).shape);
  return right - left;
};

describe('letters', () => {
  test('stand on y = 0 and are as tall as the spec says', () => {
    const { top, bottom, left } = boundsOf(write(plain, { lettering: 'H', height: mm(20) }).shape);
    expect([top, bottom]).toEqual([-mm(20), 0]);
    // the side bearing of H: 77 of 735 units of a capital's height
    expect(left).toBe(Math.round((77 / 735) * mm(20)));
  });

  test('scale with their height', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 200 }), (height) => {
        const once = areaOf(write(plain, { lettering: 'Rope', height: mm(height), ...none }).shape);
        const twice = areaOf(write(plain, { lettering: 'Rope', height: mm(2 * height), ...none }).shape);
        expect(twice / once).toBeCloseTo(4, 4);
      }),
      { numRuns: 20 },
    );
  });

  test('spacing comes between letters, not after the last', () => {
    const spec = { lettering: 'HIH', height: mm(20), ...none };
    const spaced = widthOf(plain, { ...spec, spacing: mm(3) });
    expect((spaced - widthOf(plain, spec)) / NM_PER_MM).toBeCloseTo(6, 4);
  });

  test('a space is a gap', () => {
    const spec = { lettering: 'HI', height: mm(20), ...none };
    expect(widthOf(plain, { ...spec, lettering: 'H I' })).toBeGreaterThan(widthOf(plain, spec) + mm(3));
  });

  test('joined script is one opening', () => {
    const { shape, islands } = write(script, { lettering: 'mm', height: mm(30), ...none });
    expect(shape.length - islands.length).toBe(1);
    // what the letters have in common is counted once
    const scale = mm(30) / script.capHeight;
    const apart = script.setLine('mm').map(({ id }) => Math.abs(areaOf(script.outlineOf(id))));
    const sum = apart.reduce((total, area) => total + area, 0) * scale * scale;
    expect(areaOf(shape)).toBeLessThan(0.995 * sum);
    expect(areaOf(shape)).toBeGreaterThan(0.9 * sum);
  });

  test('accents go with their letters, written as one character or two', () => {
    const one = write(plain, { lettering: 'é', height: mm(20), ...none }).shape;
    const two = write(plain, { lettering: 'e\u0301', height: mm(20), ...none }).shape;
    expect(two).toEqual(one);
  });
});

describe('a curved baseline', () => {
  const straight = { lettering: 'IIIII', height: mm(10), spacing: mm(4), ...none };

  test.each([
    ['up', 1],
    ['down', -1],
  ] as const)('bulging %s, turns each letter as a whole around the circle', (bulge, sign) => {
    const radius = mm(60);
    const flat = write(plain, straight).shape;
    const bent = write(plain, { ...straight, curve: { radius, bulge } }).shape;
    expect(bent.length).toBe(5);
    expect(areaOf(bent) / areaOf(flat)).toBeCloseTo(1, 6);
    const { left, right } = boundsOf(flat);
    const centre = { x: (left + right) / 2, y: sign * radius };
    for (const [index, contour] of bent.entries()) {
      const original = flat[index];
      const feet = contour.stretches
        .map(({ to }) => to)
        .filter((_, i) => (original?.stretches[i]?.to.y ?? -1) === 0);
      expect(feet.length).toBe(2);
      const [a = centre, b = centre] = feet;
      const middle = Math.hypot((a.x + b.x) / 2 - centre.x, (a.y + b.y) / 2 - centre.y);
      // side bearings of I are equal but for some units, so the middle of its foot is nearly that of the letter
      expect(Math.abs(middle - radius)).toBeLessThan(mm(0.001));
    }
  });

  test('keeps the middle of the line at y = 0', () => {
    const { bottom } = boundsOf(
      write(plain, { ...straight, curve: { radius: mm(60), bulge: 'down' } }).shape,
    );
    expect(Math.abs(bottom)).toBeLessThan(mm(0.1));
  });

  test.each([
    ['up', 1],
    ['down', 2],
  ] as const)('bulging %s, is refused where letters would collide', (bulge, heights) => {
    const spec = { lettering: 'I', height: mm(10), curve: { radius: mm(10 * heights) - 1, bulge } };
    expect(writeLetters(spec, plain, CALIPER)).toMatchObject({
      ok: false,
      faults: [{ path: ['curve', 'radius'], remedy: expect.stringContaining(`${10 * heights} mm`) }],
    });
    expect(writeLetters({ ...spec, curve: { radius: mm(10 * heights), bulge } }, plain, CALIPER).ok).toBe(
      true,
    );
  });

  test('is refused where the line is longer than its circle', () => {
    const spec = {
      lettering: 'A lighthouse on a rock',
      height: mm(10),
      curve: { radius: mm(15), bulge: 'up' },
    };
    expect(writeLetters({ ...spec, curve: { radius: mm(15), bulge: 'up' } }, plain, CALIPER)).toMatchObject({
      ok: false,
      faults: [{ path: ['curve', 'radius'] }],
    });
  });
});

describe('refusals', () => {
  test.each([
    ['Ж', '"Ж" (U+0416)'],
    ['fire 🔥', '"🔥" (U+1F525)'],
    ['日本', '"日" (U+65E5), no "本" (U+672C)'],
    ['a\u0416\u0416', '"Ж" (U+0416)'],
  ])('name what the font lacks in %j', (lettering, named) => {
    expect(writeLetters({ lettering, height: mm(20) }, plain, CALIPER)).toEqual({
      ok: false,
      faults: [
        {
          path: ['lettering'],
          message: `the font has no ${named}`,
          remedy: 'leave it out, write it another way, or use a font that has it',
        },
      ],
    });
  });

  test('letters that would be all bridge', () => {
    const spec = { lettering: 'oo', height: mm(3), bridgeWidth: mm(3) };
    expect(writeLetters(spec, plain, CALIPER)).toMatchObject({ ok: false, faults: [{ path: ['bridges'] }] });
  });

  test.each([
    ['', 'there is no text'],
    ['   ', 'nothing but spaces'],
    ['a\nb', 'one line'],
    ['a\u2028b', 'one line'],
    ['a\u0000', 'one line'],
    ['x'.repeat(61), 'at most 60 characters'],
  ])('the schema refuses %j', (lettering, said) => {
    const read = letteringSpec.safeParse({ lettering, height: '20 mm' });
    expect(read.success).toBe(false);
    expect(JSON.stringify(read.error?.issues)).toContain(said);
  });

  test('the schema takes 60 characters that need two units each, and refuses unknown members', () => {
    expect(letteringSpec.safeParse({ lettering: '🔥'.repeat(60), height: '20 mm' }).success).toBe(true);
    expect(letteringSpec.safeParse({ lettering: 'a', height: '20 mm', colour: 'red' }).success).toBe(false);
    expect(letteringSpec.safeParse({ lettering: 'a', height: '20 mm', font: 'nope' }).success).toBe(false);
    expect(letteringSpec.safeParse({ lettering: 'a', height: '20 mm', font: { file: '***' } }).success).toBe(
      false,
    );
    const tooLarge = { file: 'A'.repeat(4 * 60_000) };
    expect(letteringSpec.safeParse({ lettering: 'a', height: '20 mm', font: tooLarge }).success).toBe(false);
  });
});
