import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizes, sizesOfKind } from '../../shared/sizes/catalogue.ts';
import { editDistance } from '../../shared/sizes/edit-distance.ts';
import { nearestIds } from '../../shared/sizes/nearest-ids.ts';
import { sizeKinds } from '../../shared/sizes/size.ts';

describe('editDistance', () => {
  // Counted by hand.
  it.each([
    ['', '', 0],
    ['a6', 'a6', 0],
    ['', 'abc', 3],
    ['abc', '', 3],
    ['a6', 'a66', 1],
    ['a66', 'a6', 1],
    ['a6', 'b6', 1],
    ['lettre', 'letter', 1], // one swap
    ['kitten', 'sitting', 3],
    ['ca', 'abc', 3], // a swapped pair is not edited again
  ])('%j to %j is %d', (from, to, distance) => {
    expect(editDistance(from, to)).toBe(distance);
  });

  it('is the same both ways, zero for the same text only, and at most the longer length', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), fc.string({ maxLength: 12 }), (from, to) => {
        const distance = editDistance(from, to);
        expect(editDistance(to, from)).toBe(distance);
        expect(distance === 0).toBe(from === to);
        expect(distance).toBeLessThanOrEqual(Math.max(from.length, to.length));
      }),
    );
  });
});

describe('nearestIds', () => {
  it.each([
    ['iso-a66', 'iso-a6'],
    ['ISO A6', 'iso-a6'],
    ['iso_c6', 'iso-c6'],
    ['isoc6', 'iso-c6'],
    ['a6', 'iso-a6'],
    ['#10', 'us-10-envelope'],
    ['lettre', 'us-letter'],
    ['DL', 'iso-dl'],
    ['12 x 12', 'craft-12x12'],
    ['us-a2 envelop', 'us-a2-envelope'],
    ['us-a11', 'us-a1'],
  ])('%j comes nearest to %s', (text, id) => {
    expect(nearestIds(text)[0]).toBe(id);
  });

  it('names every namespace that fits equally well', () => {
    expect(nearestIds('a6')).toEqual(['iso-a6', 'us-a6', 'us-a6-envelope']);
  });

  it.each(['', '   ', 'banana', 'zz', '🂡'])('has nothing for %j', (text) => {
    expect(nearestIds(text)).toEqual([]);
  });

  it('gives the other half of a pair when that kind is wanted', () => {
    expect(nearestIds('us-a2', 'envelope')).toEqual(['us-a2-envelope']);
    expect(nearestIds('us-a2-envelope', 'card')).toEqual(['us-a2']);
    expect(nearestIds('iso-c6', 'card')).toEqual(['iso-a6']);
  });

  it('gives an id for itself', () => {
    for (const { id } of sizes) expect(nearestIds(id)[0]).toBe(id);
  });

  it('gives at most 3 known ids of the wanted kind, for any text', () => {
    const nearAnId = fc
      .tuple(fc.constantFrom(...sizes.map(({ id }) => id)), fc.nat(20))
      .map(([id, cut]) => id.slice(0, cut) + id.slice(cut + 1));
    const texts = fc.oneof(fc.string({ unit: 'binary', maxLength: 2000 }), nearAnId);
    fc.assert(
      fc.property(texts, fc.constantFrom(...sizeKinds), (text, kind) => {
        const ids = nearestIds(text, kind);
        const known = sizesOfKind(kind).map(({ id }) => id);
        expect(ids.length).toBeLessThanOrEqual(3);
        expect(new Set(ids).size).toBe(ids.length);
        for (const id of ids) expect(known).toContain(id);
      }),
    );
  });
});
