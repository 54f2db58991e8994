import type { Example } from './example.ts';

/*
 * Specs of the shop of a lighthouse museum and of its volunteers' craft evenings. All of it is invented.
 */

export const knownByHeart = {
  name: 'known-by-heart',
  summary: 'Craft evening: a 12 x 12 in sheet and the dimensions that the volunteers know by heart',
  body: {
    style: 'twin-sleeve',
    stock: { name: 'Lamp room blue', width: '12 in', height: '12 in', caliper: '0.012 in' },
    dimensions: {
      panel: { width: '4 in', height: '5 3/4 in' },
      spine: '1/2 in',
      overlap: '1/2 in',
      topFlap: '2 1/2 in',
    },
  },
} as const satisfies Example;

export const contentsOnly = {
  name: 'contents-only',
  summary: 'Shop: two folded A6 cards with C6 envelopes in each pocket, on whatever published sheet serves',
  body: {
    style: 'twin-sleeve',
    contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 },
  },
} as const satisfies Example;

export const bareInches = {
  name: 'bare-inches',
  summary: 'Shop: every length a bare number of inches, hems turned in, and as little paper as serves',
  body: {
    style: 'twin-sleeve',
    units: 'in',
    contents: {
      item: { width: 4.25, height: 5.5, form: 'flat', caliper: 0.014 },
      perPocket: 6,
      packing: 'loose',
    },
    stock: { width: 13, height: 19, grammage: 216 },
    prefer: 'least-paper',
    hem: { turn: 'in' },
    corners: 'mitred',
  },
} as const satisfies Example;

export const ownStock = {
  name: 'own-stock',
  summary: 'Shop: cards with a raised lighthouse, two own papers, one printed one way, and a small cutter',
  body: {
    style: 'twin-sleeve',
    contents: {
      item: { width: '5 in', height: '3 1/2 in', mats: ['0.3 mm'], raised: '1/32 in' },
      envelope: { width: '5 1/8 in', height: '3 5/8 in', lining: '0.1 mm' },
      perPocket: 2,
    },
    stock: [
      {
        name: 'Fog signal stripes',
        size: 'craft-12x12',
        basisWeight: { pounds: 65, grade: 'cover' },
        oneWay: true,
        printPair: 'same-way',
      },
      { name: 'Harbour chart', size: 'iso-a3', caliper: '0.25 mm' },
    ],
    cutter: { width: '12 in', height: '24 in', margin: '3 mm' },
    grid: '1/8 in',
  },
} as const satisfies Example;

export const mirroredPerforation = {
  name: 'mirrored-perforation',
  summary: 'Craft evening: perforated scores on a sheet that lies outside up, every layer in its own colour',
  body: {
    style: 'twin-sleeve',
    units: 'mm',
    contents: { item: { size: 'iso-a6' } },
    stock: { size: 'iso-a3', caliper: 0.25 },
    convention: {
      rootUnit: 'in',
      userUnit: '1/72 in',
      outline: 'always',
      sheetLies: 'outside-up',
      score: { as: 'perforation', cut: 1.5, tie: 2, inset: 1 },
      layers: {
        score: { width: 0.1, lineType: 'continuous' },
        scoreValley: { colour: '#0072B2', order: 1 },
        scoreMountain: { colour: '#D55E00', order: 2 },
        knockout: { off: true },
        cut: { colour: '#000000', width: 0.1, paint: 'stroke', order: 3 },
      },
    },
  },
} as const satisfies Example;

export const lockedPockets = {
  name: 'locked-pockets',
  summary: 'Shop: a pocket folder without glue, its pockets locked by tongues in slots',
  body: {
    style: 'pocket-folder',
    join: 'slots',
    contents: { item: { size: 'iso-a6' }, perPocket: 3 },
  },
} as const satisfies Example;

export const glueShown = {
  name: 'glue-shown',
  summary: 'Craft evening: where the tape of a pocket folder goes, for a pen on the face that lies up',
  body: {
    style: 'pocket-folder',
    contents: { item: { size: 'iso-a6' }, perPocket: 3 },
    convention: { layers: { guide: { faces: 'up' }, guideKeepOut: { colour: '#000000' } } },
  },
} as const satisfies Example;

export const sheetTooSmall = {
  name: 'sheet-too-small',
  summary:
    'Refused: A6 cards with envelopes need more than a 12 x 12 in sheet; the reply says what would help',
  body: {
    style: 'twin-sleeve',
    contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' } },
    stock: { size: 'craft-12x12' },
  },
} as const satisfies Example;
