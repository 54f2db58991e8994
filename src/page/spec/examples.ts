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
      contents: {
        item: { width: '3 1/2 in', height: '4 7/8 in' },
        envelope: { width: '3 5/8 in', height: '5 1/8 in' },
        perPocket: 2,
      },
      stock: { size: 'craft-12x12', caliper: '0.012 in' },
      knockouts: [
        {
          kind: 'figure',
          on: { place: 'front cover', offset: { left: '7/8 in', up: '1 in' } },
          figure: { shape: 'heart', width: '1 1/4 in' },
        },
      ],
    },
  },
  {
    name: 'outcome.example.box',
    spec: {
      style: 'tuck-box',
      units: 'mm',
      contents: { item: { size: 'iso-a6' }, perPocket: 24 },
      stock: { size: 'iso-a3', caliper: '0.3 mm' },
    },
  },
];
