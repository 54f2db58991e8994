import fc from 'fast-check';
import { applyPatch } from 'rfc6902';
import { describe, expect, test } from 'vitest';
import { stockForSpec } from '../../shared/kept/kept-stock.ts';
import { fromFragment, linkFragment, secretIn, toFragment } from '../../src/page/spec/address.ts';
import { changed, historyOf, redone, undone } from '../../src/page/spec/history.ts';
import { paperForSpec } from '../../src/page/spec/kept-paper.ts';
import { type Json, type Spec, valueAt, withChanges, withValue } from '../../src/page/spec/pointer.ts';

const names = fc.constantFrom('contents', 'stock', 'a/b', 'c~d', 'width', 'size');
const plain: fc.Arbitrary<Json> = fc.oneof(fc.string(), fc.integer(), fc.boolean());
const specs: fc.Arbitrary<Spec> = fc.dictionary(
  names,
  fc.oneof(plain, fc.dictionary(names, plain, { minKeys: 1, noNullPrototype: true })),
  { noNullPrototype: true },
);
const pointers = fc
  .array(names, { minLength: 1, maxLength: 2 })
  .map((parts) => parts.map((part) => `/${part.replaceAll('~', '~0').replaceAll('/', '~1')}`).join(''));

describe('members of a spec', () => {
  test('are where they were put, and nothing else has changed', () => {
    fc.assert(
      fc.property(specs, pointers, plain, (spec, pointer, value) => {
        const parent = pointer.replace(/\/[^/]*$/u, '');
        const there = valueAt(spec, parent);
        fc.pre(parent === '' || there === undefined || typeof there === 'object');
        const before = structuredClone(spec);
        const after = withValue(spec, pointer, value);
        expect(valueAt(after, pointer)).toEqual(value);
        expect(spec).toEqual(before);
        const [first = ''] = pointer.slice(1).split('/');
        const name = first.replaceAll('~1', '/').replaceAll('~0', '~');
        const others = (all: Spec) => Object.entries(all).filter(([member]) => member !== name);
        expect(others(after)).toEqual(others(spec));
      }),
    );
  });

  test('leave no empty object behind', () => {
    expect(withValue({ contents: { item: { size: 'iso-a6' } } }, '/contents/item/size', undefined)).toEqual(
      {},
    );
    expect(withValue({ stock: { size: 'iso-a3', oneWay: true } }, '/stock/oneWay', undefined)).toEqual({
      stock: { size: 'iso-a3' },
    });
  });

  test('are changed by proposals as JSON Patch changes them', () => {
    fc.assert(
      fc.property(specs, names, plain, fc.boolean(), (spec, name, value, isRemoved) => {
        const path = `/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`;
        fc.pre(!isRemoved || Object.hasOwn(spec, name));
        const change = isRemoved ? { op: 'remove' as const, path } : { op: 'add' as const, path, value };
        const byOther = structuredClone(spec) as object;
        expect(applyPatch(byOther, [change])).toEqual([null]);
        expect(withChanges(spec, [change])).toEqual(byOther);
      }),
    );
    const list = { stock: ['a', 'b', 'c'] };
    expect(withChanges(list, [{ op: 'remove', path: '/stock/1' }])).toEqual({ stock: ['a', 'c'] });
  });
});

describe('the address', () => {
  test('gives back the design that it holds', () => {
    fc.assert(
      fc.property(specs, fc.boolean(), (spec, swapped) => {
        const fragment = toFragment({ spec, swapped });
        expect(fragment).toMatch(/^#d=[\w-]+$/u);
        expect(fromFragment(fragment)).toEqual({ spec, swapped });
      }),
    );
  });

  test.each(['', '#', '#outcome', '#d=', '#d=%%%', '#d=AAAA', '#d=W10', '#d=eyJzcGVjIjoxfQ'])(
    'of nothing that can be read, as in %j, is no design',
    (fragment) => expect(fromFragment(fragment)).toBeUndefined(),
  );

  test('of a shared design has its secret', () => {
    expect(secretIn(linkFragment('a_b-c/d'))).toBe('a_b-c/d');
    expect(secretIn('#d=e30')).toBeUndefined();
    expect(secretIn('#link=%')).toBeUndefined();
  });
});

describe('the history', () => {
  test('goes back and forth through every state', () => {
    const history = ['b', 'c', 'd'].reduce((all, each) => changed(all, each), historyOf('a'));
    const back = undone(undone(history));
    expect(back.now).toBe('b');
    expect(redone(redone(redone(back))).now).toBe('d');
    expect(undone(historyOf('a'))).toEqual(historyOf('a'));
  });

  test('takes what is typed into one field as one change', () => {
    const typed = ['1', '12', '120'].reduce((all, each) => changed(all, each, '/width'), historyOf(''));
    expect(undone(typed).now).toBe('');
    const other = changed(typed, '120 x', '/height');
    expect(undone(other).now).toBe('120');
  });

  test('forgets what was undone once something else is done', () => {
    const other = changed(undone(changed(historyOf('a'), 'b')), 'c');
    expect(redone(other).now).toBe('c');
  });
});

test('a kept paper comes into a spec as the service puts it there', () => {
  const kept = { size: 'iso-a3', caliper: '0.25 mm', count: 7, price: { perSheet: 1, currency: 'EUR' } };
  const all = { ...kept, faces: { outside: 'waves' }, notes: 'top shelf' };
  expect(paperForSpec('Harbour chart', all)).toEqual({
    name: 'Harbour chart',
    ...(stockForSpec(all) as object),
  });
});
