import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { drawingRules } from '../support/drawing-rules.ts';
import { mustDraw } from '../support/drawn.ts';

/*
 * Drawings that somebody has looked at and found right, compared whole. When a drawing changes on purpose,
 * look at the new one and approve it:
 *
 *   HEMFOLD_APPROVE=1 npx vitest run tests/drawing/approved.test.ts
 *
 * writes every drawing anew; the difference is then part of the change that is reviewed.
 */
const approving = process.env.HEMFOLD_APPROVE === '1' && process.env.CI === undefined;
const folder = new URL('../approved/', import.meta.url);

const chartPaper = { name: 'Harbour chart paper', width: '305 mm', height: '390 mm', caliper: '0.25 mm' };
const museumCards = { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 };

/** What the lighthouse museum's shop and its craft evenings fold. */
const scenarios: Readonly<Record<string, object>> = {
  'museum-cards-trimmed-sheet': { contents: museumCards, stock: chartPaper, prefer: 'least-paper' },
  'craft-evening-whole-12-inch-sheet': {
    dimensions: {
      panel: { width: '4 in', height: '5 3/4 in' },
      spine: '1/2 in',
      hem: '1 3/4 in',
      topFlap: '2 1/2 in',
      overlap: '1/2 in',
    },
    stock: { name: 'Keeper’s stripe', width: '12 in', height: '12 in' },
  },
  'mitred-corners-cut-off-whole-sheet': {
    corners: 'mitred',
    dimensions: { panel: { width: 108, height: 146 }, spine: 12, hem: 36, topFlap: 62, overlap: 13 },
    units: 'mm',
    stock: { name: 'Foghorn blue', width: 300, height: 305 },
  },
  'hems-turned-in-mitred-outline': {
    contents: museumCards,
    stock: chartPaper,
    prefer: 'least-paper',
    corners: 'mitred',
    hem: { turn: 'in' },
  },
  'perforated-scores': {
    contents: { item: { size: 'us-a2' } },
    stock: { size: 'us-ledger' },
    convention: { score: { as: 'perforation', cut: '2 mm', tie: '3 mm', inset: '3 mm' }, outline: 'always' },
  },
  'scores-stop-short-outside-up': {
    contents: { item: { size: 'iso-a6' } },
    stock: { ...chartPaper, oneWay: true },
    convention: { sheetLies: 'outside-up', score: { inset: '2 mm' } },
  },
  'turned-for-a-narrow-cutter': {
    contents: museumCards,
    stock: { width: '420 mm', height: '594 mm' },
    cutter: { width: '600 mm', height: '305 mm', margin: '3 mm' },
    prefer: 'least-paper',
  },
  'own-colours-in-96ths-of-an-inch': {
    contents: { item: { size: 'us-a2' }, perPocket: 1 },
    stock: { width: '12 in', height: '18 in' },
    prefer: 'least-paper',
    convention: {
      rootUnit: 'px',
      userUnit: '1/96 in',
      outline: 'always',
      layers: {
        score: { colour: '#0072B2', width: '0.5 mm', order: 30 },
        scoreMountain: { colour: '#000000', lineType: 'dotted' },
        knockout: { off: true },
        cut: { colour: '#F0E442', paint: 'fill', order: 5 },
      },
    },
  },
  'guide-of-all-that-is-glued': {
    contents: museumCards,
    stock: chartPaper,
    prefer: 'least-paper',
    convention: { layers: { guide: {} } },
  },
};

describe('approved drawings', () => {
  it.each(Object.entries(scenarios))('%s', (name, spec) => {
    const drawn = mustDraw({ style: 'twin-sleeve', ...spec });
    const file = new URL(`${name}.svg`, folder);
    if (approving) writeFileSync(file, drawn.svg);
    expect(drawn.svg).toBe(readFileSync(file, 'utf8'));
    expect(drawingRules.flatMap((rule) => rule.broken(drawn) ?? [])).toEqual([]);
  });

  it('are all drawn anew: no approved file is left that nobody compares', () => {
    const files = readdirSync(folder).filter((file) => file.endsWith('.svg'));
    expect(files.toSorted()).toEqual(
      Object.keys(scenarios)
        .map((name) => `${name}.svg`)
        .toSorted(),
    );
  });
});
