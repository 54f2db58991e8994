import { calibrationExamples } from './calibration-examples.ts';
import type { Examples } from './example.ts';
import {
  bareInches,
  contentsOnly,
  glueShown,
  knownByHeart,
  lockedPockets,
  mirroredPerforation,
  ownStock,
  sheetTooSmall,
} from './example-specs.ts';
import { heartWindow, notchAndCorners, unknownPlace } from './knockout-examples.ts';
import { memberExamples } from './member-examples.ts';
import { setExamples } from './set-examples.ts';
import { storedExamples } from './stored-examples.ts';

const unseen = { show: 'none' } as const;
const excerpt = { show: 'excerpt' } as const;

/** The examples in the contract, by operation id; a test runs each. Every operation needs one. */
export const examples: Examples = {
  planFolder: [
    { ...knownByHeart, ...excerpt },
    { ...heartWindow, ...unseen },
    { ...contentsOnly, ...unseen },
    { ...bareInches, ...unseen },
    { ...ownStock, ...unseen },
    { ...mirroredPerforation, ...unseen },
    { ...lockedPockets, ...excerpt },
    sheetTooSmall,
  ],
  drawFolder: [
    knownByHeart,
    { ...notchAndCorners, ...unseen },
    {
      ...heartWindow,
      ...unseen,
      name: 'inlay',
      summary: 'The inlay of that heart',
      parameters: { piece: 'inlay-1' },
    },
    unknownPlace,
    { ...contentsOnly, ...unseen },
    { ...ownStock, ...unseen },
    { ...mirroredPerforation, ...unseen },
    { ...lockedPockets, ...unseen },
    { ...glueShown, ...unseen },
    sheetTooSmall,
  ],
  foldFolder: [{ ...knownByHeart, ...excerpt }, { ...ownStock, ...unseen }, sheetTooSmall],
  viewFolder: [
    {
      ...knownByHeart,
      name: 'known-by-heart-closed',
      summary: 'Craft evening: both covers of the folder whose dimensions the volunteers know by heart',
      parameters: { view: 'closed' },
    },
    { ...ownStock, ...unseen },
    {
      ...contentsOnly,
      ...unseen,
      name: 'contents-only-first-step',
      summary: 'Shop: the first fold of a folder for two A6 cards with C6 envelopes in each pocket',
      parameters: { view: 'step-1' },
    },
    {
      ...knownByHeart,
      name: 'step-too-far',
      summary: 'Refused: the folder has fewer steps than that',
      parameters: { view: 'step-40' },
    },
    sheetTooSmall,
  ],
  guideFolder: [
    { ...contentsOnly, ...unseen, name: 'as-a-page', summary: 'Shop: the maker’s sheet as a page' },
    {
      ...knownByHeart,
      ...unseen,
      name: 'large-print-by-hand',
      summary: 'Craft evening: a PDF in large print, without a machine, on letter paper, with a template',
      parameters: { format: 'pdf', print: 'large', machine: 'no', paper: 'letter', template: 'yes' },
    },
    sheetTooSmall,
  ],
  possibleFolders: [
    {
      name: 'craft-sheet',
      summary: 'Craft evening: what a 12 x 12 in sheet can become',
      body: { style: 'twin-sleeve', stock: { name: 'Lamp room blue', size: 'craft-12x12' } },
      show: 'excerpt',
    },
    {
      name: 'own-sheet',
      summary: 'Shop: what a sheet of one’s own can become on a small machine, with mitred corners',
      body: {
        style: 'twin-sleeve',
        units: 'mm',
        stock: { width: 350, height: 500, grammage: 200, oneWay: true },
        cutter: { width: 330, height: 600 },
        corners: 'mitred',
      },
      show: 'none',
    },
  ],
  ...calibrationExamples,
  ...storedExamples,
  ...memberExamples,
  ...setExamples,
  listStyles: [{ name: 'styles', summary: 'Every way of folding' }],
  listSizes: [{ name: 'sizes', summary: 'The published sizes', show: 'excerpt' }],
  explainProblem: [
    {
      name: 'cannot-be-folded',
      summary: 'What to make of a refused spec',
      parameters: { name: 'cannot-be-folded' },
    },
    {
      name: 'invalid-spec',
      summary: 'What to make of a slip in a spec',
      parameters: { name: 'invalid-spec' },
    },
  ],
  getHealth: [{ name: 'well', summary: 'Ready for work' }],
  getLiveness: [{ name: 'well', summary: 'Running' }],
  getMetrics: [{ name: 'scrape', summary: 'What the service has counted so far', show: 'none' }],
};
