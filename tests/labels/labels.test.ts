import { beforeAll, describe, expect, test } from 'vitest';
import type { Labels } from '../../shared/labels/labels.ts';
import { labelsOf } from '../../shared/labels/labels-of.ts';
import type { CutPiece } from '../../shared/sets/cut-piece.ts';
import { type SetSpec, setSpec } from '../../shared/sets/set-spec.ts';
import { cutPieces } from '../../src/sets/cut-pieces.ts';
import { easySleeve } from '../support/sleeves.ts';
import { evening } from './evening.ts';

describe('labels of a set', () => {
  let set: SetSpec;
  let pieces: readonly CutPiece[];
  let labels: Labels;
  beforeAll(async () => {
    set = setSpec.parse(evening);
    pieces = await cutPieces(set);
    labels = labelsOf(set, pieces, { print: 'standard' });
  });

  test('number every kit, and name each of its pieces as often as it is in there', () => {
    expect(labels.kits.map(({ heading }) => heading)).toEqual(
      Array.from({ length: 9 }, (_, index) => `Lamp room evening: ${index + 1} of 9`),
    );
    for (const { lines } of labels.kits)
      expect(lines.map(({ lead }) => lead)).toEqual([
        'For',
        '1 × folder',
        '2 × tag',
        '4 × mat',
        '1 × ribbon',
      ]);
  });

  test('tell what is not folded by its size, and what is by its finished size and what goes in', () => {
    const text = (lead: string) => labels.kits[0]?.lines.find((line) => line.lead === lead)?.text;
    expect(text('4 × mat')).toBe('90 mm by 60 mm');
    expect(text('1 × folder')).toContain('Twin sleeve, finished');
    expect(text('1 × folder')).toContain(
      'to hold 2 cards with their envelopes for each pocket, 114 mm by 162 mm',
    );
  });

  test('have a card for each piece that is folded, and none for what is only cut', () => {
    expect(labels.cards.map(({ heading }) => heading)).toEqual(['Folder']);
  });

  test('give every score from the home edge in both systems, whatever the tool takes away', async () => {
    const make = { ...easySleeve, corners: 'mitred', units: 'mm' };
    const pieces = [{ name: 'folder', make }];
    const cutter = { width: 600, height: 600, kerf: 0.4 };
    const easy = setSpec.parse({ kits: 1, units: 'mm', pieces, papers: [{ size: 'iso-a2' }], cutter });
    const [card] = labelsOf(easy, await cutPieces(easy), { print: 'standard' }).cards;
    const texts = card?.lines.flatMap(({ lead, text }) => (/mm:$|^in,/u.test(lead ?? '') ? [text] : []));
    expect(texts).toEqual([
      '30 · 130 · 140 · 240',
      '1 3/16 · 5 1/8 · 5 1/2 · 9 7/16',
      '60 · 210',
      '2 3/8 · 8 1/4',
    ]);
  });

  test('number the folds as the maker’s sheet does', () => {
    const steps = labels.cards[0]?.lines.filter(({ lead }) => /^\d+\.$/u.test(lead ?? '')) ?? [];
    expect(steps.map(({ lead }) => lead)).toEqual(steps.map((_, index) => `${index + 1}.`));
    expect(steps.length).toBe(pieces[0]?.folded?.program.steps.length);
  });
});
