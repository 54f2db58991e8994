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
  repeatsIn,
  shapeNames,
  withOffset,
} from '../../src/page/spec/knockouts.ts';
import { type Spec, withValue } from '../../src/page/spec/pointer.ts';

const first = { place: 'front cover', pocket: 'front pocket', units: 'mm' } as const;
const inInches = { ...first, units: 'in' } as const;
const elsewhere = { place: 'back cover', anchor: 'top', offset: { down: '20 mm' } };

describe('what can be cut out', () => {
  test('is every shape of the core, but for those that have a kind of their own', () => {
    const own = shapes.map(({ name }) => name).filter((name) => !shapeNames.some((each) => each === name));
    expect(own).toEqual(['ribbon-slot', 'thumb-notch']);
  });

  const beginnings = kindNames.flatMap((kind) => [[kind, 'mm'] as const, [kind, 'in'] as const]);

  test.each(beginnings)('%s begins with what the core can read and cut, in %s', async (kind, units) => {
    const made = newKnockout(kind, { ...first, units });
    expect(kindOf(made)).toBe(kind);
    expect(knockout.safeParse(made).error).toBeUndefined();
    if (kind === 'lettering') return; // its font is fetched, which the tests in a browser do
    const contents = { item: { size: 'iso-a6' } };
    const spec = { style: 'twin-sleeve', units, contents, knockouts: [made] };
    await prepareFor(spec);
    expect(methods.fold(spec)).toMatchObject({ state: 'folded', forbids: [] });
  });

  test('has lengths in the units of the page', () => {
    const lengths = (units: 'mm' | 'in') =>
      JSON.stringify([kindNames.map((kind) => newKnockout(kind, { ...first, units })), repeatsIn(units)])
        .match(/"[^"]*\d (?:mm|in)"/gu)
        ?.map((text) => text.slice(1, -1));
    expect(lengths('mm')?.filter((each) => !each.endsWith(' mm'))).toEqual([]);
    expect(lengths('in')?.filter((each) => !/^(?:\d+|(?:\d+ )?[1357]\/[248]) in$/u.test(each))).toEqual([]);
    expect(lengths('in')).toHaveLength(lengths('mm')?.length ?? 0);
    expect(newKnockout('tag', inInches).figure).toMatchObject({ width: '1 1/8 in', height: '2 in' });
    expect(newKnockout('rounded-corners', inInches).radius).toBe('1/4 in');
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
    for (const units of ['mm', 'in'] as const)
      for (const [name, repeat] of Object.entries(repeatsIn(units))) {
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
  const { styles } = methods.catalogue();
  const form = (name: string) => styles.find((each) => each.name === name) ?? expect.fail(name);

  test('holds the same, or is as large as the card, and has no sizes of the one before', () => {
    const band = asStyle(form('belly-band'), sleeve);
    expect(band).toEqual({ style: 'belly-band', ...shared, contents: sleeve.contents });
    const base = asStyle(form('card-base'), sleeve);
    expect(base).toEqual({ style: 'card-base', ...shared, card: { size: 'iso-a6' } });
    expect(asStyle(form('tag'), base)).toEqual({ style: 'tag', ...shared });
    expect(asStyle(form('envelope'), base)).toEqual({
      style: 'envelope',
      ...shared,
      contents: { item: { size: 'iso-a6' } },
    });
  });

  test('keeps what was chosen where the other has the same choice', () => {
    const folder = { ...sleeve, style: 'pocket-folder', join: 'slots', dimensions: {} };
    const box = asStyle(form('tuck-box'), folder);
    expect(box).toEqual({ style: 'tuck-box', ...shared, contents: sleeve.contents, join: 'slots' });
    // a choice that it does not have, or that it has other words for
    expect(asStyle(form('envelope'), box)).not.toHaveProperty('join');
    expect(asStyle(form('tuck-box'), { ...box, join: 'tape' })).not.toHaveProperty('join');
  });

  test('can read all that it keeps', () => {
    for (const from of styles)
      for (const to of styles) {
        const chosen = from.choices.reduce<Spec>(
          (spec, { path, options }) => withValue(spec, path, options.at(-1)),
          asStyle(from, { units: 'mm', contents: sleeve.contents }),
        );
        const answer = methods.fold(asStyle(to, chosen));
        expect(answer.state, `${from.name} as ${to.name}`).not.toBe('unreadable');
      }
  });
});
