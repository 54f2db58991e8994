import { describe, expect, test } from 'vitest';
import { nearestName } from '../../../shared/spec/nearest-name.ts';
import { jsonPointer } from '../../../src/problem/json-pointer.ts';

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
