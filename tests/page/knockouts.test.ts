import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knockout } from '../../shared/knockouts/knockout-spec.ts';
import { repeatSpec } from '../../shared/knockouts/motifs/registry.ts';
import { shapes } from '../../shared/knockouts/shapes/registry.ts';
import { methods } from '../../src/page/ask/methods.ts';
import { prepareFor } from '../../src/page/ask/tools.ts';
import { asStyle } from '../../src/page/spec/as-style.ts';
import {
  asKind,
  kindNames,
  kindOf,
  newKnockout,
  offsetText,
  repeats,
  shapeNames,
  withOffset,
} from '../../src/page/spec/knockouts.ts';

const first = { place: 'front cover', pocket: 'front pocket' };
const elsewhere = { place: 'back cover', anchor: 'top', offset: { down: '20 mm' } };

describe('what can be cut out', () => {
  test('is every shape of the core, but for those that have a kind of their own', () => {
    const own = shapes.map(({ name }) => name).filter((name) => !shapeNames.some((each) => each === name));
    expect(own).toEqual(['ribbon-slot', 'thumb-notch']);
  });

  test.each(kindNames)('%s begins with what the core can read and cut', async (kind) => {
    const made = newKnockout(kind, first);
    expect(kindOf(made)).toBe(kind);
    expect(knockout.safeParse(made).error).toBeUndefined();
    if (kind === 'lettering') return; // its font is fetched, which the tests in a browser do
    const contents = { item: { size: 'iso-a6' } };
    const spec = { style: 'twin-sleeve', units: 'mm', contents, knockouts: [made] };
    await prepareFor(spec);
    expect(methods.fold(spec)).toMatchObject({ state: 'folded', forbids: [] });
  });

  test('stays in its place when it becomes something else that has one', () => {
    const circle = { ...newKnockout('circle', first), on: elsewhere };
    for (const kind of kindNames) {
      const other = asKind(kind, circle, first);
      expect(kindOf(other)).toBe(kind);
      if (other.on !== undefined) expect(other.on).toEqual(elsewhere);
    }
  });

  test('is repeated as the core can read it', () => {
    for (const [name, repeat] of Object.entries(repeats)) {
      expect(repeat.repeat).toBe(name);
      expect(repeatSpec.safeParse(repeat).error).toBeUndefined();
    }
  });

  test('is moved along each axis by a length that may begin with a minus', () => {
    const axis = fc.constantFrom('right', 'down');
    const text = fc.constantFrom('', '5 mm', '-5 mm', '1/2 in', '-1/2 in');
    fc.assert(
      fc.property(axis, text, axis, text, (one, given, other, before) => {
        const held = withOffset(withOffset(undefined, other, before), one, given);
        expect(offsetText(held, one)).toBe(given);
        if (one !== other) expect(offsetText(held, other)).toBe(before);
        expect(Object.values(held ?? { none: 'x' }).join()).not.toContain('-');
      }),
    );
  });
});

describe('another way of folding', () => {
  const sleeve = {
    style: 'twin-sleeve',
    units: 'mm',
    contents: { item: { size: 'iso-a6', form: 'flat' }, perPocket: 3 },
    stock: { size: 'iso-a3' },
    seam: 'flat',
    dimensions: { spine: '9 mm' },
  };
  const shared = { units: 'mm', stock: { size: 'iso-a3' } };

  test('holds the same, or is as large as the card, and has no sizes of the one before', () => {
    const band = asStyle({ name: 'belly-band', madeFor: 'contents' }, sleeve);
    expect(band).toEqual({ style: 'belly-band', ...shared, contents: sleeve.contents });
    const base = asStyle({ name: 'card-base', madeFor: 'card' }, sleeve);
    expect(base).toEqual({ style: 'card-base', ...shared, card: { size: 'iso-a6' } });
    expect(asStyle({ name: 'tag', madeFor: 'nothing' }, base)).toEqual({ style: 'tag', ...shared });
    expect(asStyle({ name: 'envelope', madeFor: 'contents' }, base)).toEqual({
      style: 'envelope',
      ...shared,
      contents: { item: { size: 'iso-a6' } },
    });
  });
});
