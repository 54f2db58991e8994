import type { WordName } from '../words/en.ts';
import type { Spec } from './pointer.ts';

/** Folders of the lighthouse museum's craft evenings, to begin with. */
export const examples: readonly { readonly name: WordName; readonly spec: Spec }[] = [
  {
    name: 'outcome.example.museum',
    spec: {
      style: 'twin-sleeve',
      units: 'mm',
      contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 },
      stock: { name: 'Harbour chart', size: 'iso-a3', caliper: '0.25 mm' },
    },
  },
  {
    name: 'outcome.example.heart',
    spec: {
      style: 'twin-sleeve',
      units: 'in',
      stock: { name: 'Lamp room blue', width: '12 in', height: '12 in', caliper: '0.012 in' },
      dimensions: {
        panel: { width: '4 in', height: '5 3/4 in' },
        spine: '1/2 in',
        overlap: '1/2 in',
        topFlap: '2 1/2 in',
      },
    },
  },
];
