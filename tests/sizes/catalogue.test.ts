import { describe, expect, it } from 'vitest';
import { envelopesFor, sizeById, sizes, sizesOfKind } from '../../shared/sizes/catalogue.ts';
import { sizeKinds } from '../../shared/sizes/size.ts';

describe('the catalogue of sizes', () => {
  it('has every id once, in lower case and with a namespace', () => {
    const ids = sizes.map((size) => size.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^(?:iso|din|jis|metric|us|craft)-[a-z0-9.-]+$/u);
  });

  it.each(sizes)('$id is upright, whole and says where it comes from', (size) => {
    expect(Number.isSafeInteger(size.width) && Number.isSafeInteger(size.height)).toBe(true);
    expect(size.width).toBeGreaterThan(0);
    expect(size.width).toBeLessThanOrEqual(size.height);
    expect(size.kinds.length).toBeGreaterThan(0);
    expect(size.title).not.toBe('');
    expect(size.source).not.toBe('');
  });

  it('an envelope takes cards, which lie flat in it', () => {
    const pairs = sizes.flatMap((envelope) =>
      (envelope.takes ?? []).map((id) => ({ envelope, card: sizeById(id) })),
    );
    expect(pairs.length).toBeGreaterThan(10);
    for (const { envelope, card } of pairs) {
      expect(envelope.kinds).toContain('envelope');
      expect(card?.kinds).toContain('card');
      expect(envelope.width).toBeGreaterThan(card?.width ?? Number.POSITIVE_INFINITY);
      expect(envelope.height).toBeGreaterThan(card?.height ?? Number.POSITIVE_INFINITY);
    }
  });

  it('every US card that has an envelope by its name goes into that one', () => {
    const named = sizesOfKind('card').filter((card) => sizeById(`${card.id}-envelope`) !== undefined);
    expect(named.map((card) => card.id)).toEqual([
      'us-a1',
      'us-a2',
      'us-a6',
      'us-a7',
      'us-a8',
      'us-a9',
      'us-a10',
      'us-slim',
    ]);
    for (const card of named) expect(sizeById(`${card.id}-envelope`)?.takes).toContain(card.id);
  });

  it('finds the envelopes for a card', () => {
    expect(envelopesFor('iso-a6').map((size) => size.id)).toEqual(['iso-c6']);
    expect(envelopesFor('us-a2').map((size) => size.id)).toEqual(['us-a2-envelope']);
    expect(envelopesFor('us-3x5')).toEqual([]);
  });

  it('keeps the namespaces apart', () => {
    expect(sizeById('us-a2')?.width).not.toBe(sizeById('iso-a2')?.width);
    expect(sizeById('a2')).toBeUndefined();
  });

  it.each(['constructor', '__proto__', 'toString', '', 'ISO-A6'])('has nothing called %j', (id) => {
    expect(sizeById(id)).toBeUndefined();
  });

  it.each(sizeKinds)('lists what serves as %s, and only that', (kind) => {
    const listed = sizesOfKind(kind);
    expect(listed.length).toBeGreaterThan(5);
    expect(listed).toEqual(sizes.filter((size) => size.kinds.includes(kind)));
  });

  it('one size may serve twice', () => {
    expect(sizeById('iso-a6')?.kinds).toEqual(['card', 'sheet']);
  });

  it('cannot be changed', () => {
    expect(Object.isFrozen(sizes)).toBe(true);
    for (const size of sizes) {
      expect(Object.isFrozen(size) && Object.isFrozen(size.kinds)).toBe(true);
      expect(size.takes === undefined || Object.isFrozen(size.takes)).toBe(true);
    }
  });
});
