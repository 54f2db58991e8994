import { beforeAll, describe, expect, test } from 'vitest';
import type { Labels } from '../../shared/labels/labels.ts';
import { labelsOf } from '../../shared/labels/labels-of.ts';
import type { CutPiece } from '../../shared/sets/cut-piece.ts';
import { type SetSpec, setSpec } from '../../shared/sets/set-spec.ts';
import { cutPieces } from '../../src/sets/cut-pieces.ts';
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
      'to hold 2 cards with envelopes for each pocket, 114 mm by 162 mm each',
    );
  });

  test('have a card for each piece that is folded, and none for what is only cut', () => {
    expect(labels.cards.map(({ heading }) => heading)).toEqual(['Folder']);
  });

  test('give every score of the drawing, from the home edge, in both systems', () => {
    const [card] = labels.cards;
    const drawing = pieces[0]?.drawing;
    const scores = [...(drawing?.valleys ?? []), ...(drawing?.mountains ?? [])];
    const upright = scores.flatMap(({ points: [from, to] }) =>
      from && to && from.x === to.x ? [Math.round(from.x / 100_000) / 10] : [],
    );
    const written = card?.lines.find(({ lead }) => lead?.startsWith('Scores from the left edge'))?.text ?? '';
    const read = written.split(' · ').map((position) => Number(position.replace('*', '')));
    expect(new Set(read)).toEqual(new Set(upright));
    expect(read.length).toBeGreaterThan(1);
    const inches = card?.lines.filter(({ lead }) => lead?.startsWith('in,')).map(({ text }) => text) ?? [];
    expect(inches[0]?.split(' · ')).toHaveLength(read.length);
  });

  test('number the folds as the maker’s sheet does', () => {
    const steps = labels.cards[0]?.lines.filter(({ lead }) => /^\d+\.$/u.test(lead ?? '')) ?? [];
    expect(steps.map(({ lead }) => lead)).toEqual(steps.map((_, index) => `${index + 1}.`));
    expect(steps.length).toBe(pieces[0]?.folded?.program.steps.length);
  });
});
