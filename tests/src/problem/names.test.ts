import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jsonPointer } from '../../../src/problem/json-pointer.ts';
import { editDistance, nearestName } from '../../../src/problem/nearest-name.ts';

describe('jsonPointer', () => {
  // RFC 6901 section 5, from memory
  test.each([
    [[], ''],
    [['foo'], '/foo'],
    [['foo', 0], '/foo/0'],
    [[''], '/'],
    [['a/b'], '/a~1b'],
    [['c%d'], '/c%d'],
    [['m~n'], '/m~0n'],
    [['~1'], '/~01'],
  ])('writes %j as %j', (path, pointer) => {
    expect(jsonPointer(path)).toBe(pointer);
  });
});

describe('editDistance', () => {
  // classic worked examples of the textbook: three changes; one swap
  test.each([
    ['kitten', 'sitting', 3],
    ['width', 'widht', 1],
    ['', 'hem', 3],
    ['hem', 'hem', 0],
  ])('from %s to %s is %i', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
  });

  test('is the same both ways, nothing only for equal names, and never more than the longer name', () => {
    const name = fc.string({ maxLength: 12 });
    fc.assert(
      fc.property(name, name, (a, b) => {
        const distance = editDistance(a, b);
        expect(distance).toBe(editDistance(b, a));
        expect(distance === 0).toBe(a === b);
        expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
        expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
      }),
    );
  });
});

describe('nearestName', () => {
  const known = ['topFlap', 'bottomFlap', 'spine', 'hem'];
  test.each([
    ['topflap', 'topFlap'],
    ['top-flap', 'topFlap'],
    ['spien', 'spine'],
    ['hemm', 'hem'],
    ['colour', undefined],
    ['', undefined],
    ['x'.repeat(10_000), undefined],
  ])('takes %j for %j', (name, meant) => {
    expect(nearestName(name, known)).toBe(meant);
  });
});
