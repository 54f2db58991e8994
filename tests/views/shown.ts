import { type Folded, proofOf } from '../../shared/folding/proof-of.ts';
import type { Picture } from '../../shared/views/picture.ts';
import type { ViewName } from '../../shared/views/view-name.ts';
import { pictureOf } from '../../shared/views/views.ts';
import { writePicture } from '../../src/svg/write-picture.ts';
import { solved } from '../support/solved.ts';

/** Note cards for the lighthouse museum's shop, and folders for its craft evenings. */
const twelveInch = {
  style: 'twin-sleeve',
  stock: { width: '12 in', height: '12 in' },
  dimensions: {
    panel: { width: '4 in', height: '5 3/4 in' },
    spine: '1/2 in',
    overlap: '1/2 in',
    topFlap: '2 1/2 in',
  },
  contents: {
    item: { width: '5 in', height: '3 1/2 in' },
    envelope: { width: '5 1/8 in', height: '3 5/8 in' },
  },
} as const;

const a6 = {
  style: 'twin-sleeve',
  contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 },
  stock: { size: 'iso-a3' },
} as const;

export const examples = {
  'hems-out': twelveInch,
  'hems-in': { ...twelveInch, hem: { turn: 'in' } },
  mitred: { ...twelveInch, corners: 'mitred' },
  'a6-on-a3': a6,
  'flat-seam': { ...a6, seam: 'flat', hem: { turn: 'in' }, corners: 'mitred' },
  'head-to-foot': { ...a6, stock: { size: 'iso-a3', oneWay: true, printPair: 'head-to-foot' } },
  turned: { ...a6, stock: { width: '390 mm', height: '305 mm', turned: true } },
  'tiny-hems': {
    style: 'twin-sleeve',
    units: 'mm',
    dimensions: { panel: { width: 100, height: 140 }, hem: 9.5, spine: 5, overlap: 10, topFlap: 60 },
  },
  'very-wide': {
    style: 'twin-sleeve',
    units: 'mm',
    dimensions: { panel: { width: 300, height: 60 }, hem: 20, spine: 40, overlap: 12, topFlap: 30 },
  },
  'very-tall': {
    style: 'twin-sleeve',
    units: 'mm',
    dimensions: { panel: { width: 40, height: 300 }, hem: 10, spine: 4, overlap: 12, topFlap: 30 },
  },
} as const;

export type ExampleName = keyof typeof examples;
export const exampleNames = Object.keys(examples) as ExampleName[];

export const folded = (name: ExampleName): Folded => proofOf(solved(examples[name]));

/** The picture of an example; fails the test when there is none. */
export function shown(name: ExampleName, view: ViewName): Picture {
  const picture = pictureOf(folded(name), view);
  if (!picture) throw new Error(`${name} has no ${view}`);
  return picture;
}

export const written = (name: ExampleName, view: ViewName): string => writePicture(shown(name, view));
