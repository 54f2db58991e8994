import type { Json } from './json.ts';

/*
 * What the lighthouse museum's shop and its craft evenings keep. All of it is invented.
 */

/** The secret part of the link that the examples read; it opens nothing elsewhere. */
export const exampleSecret = 'an-example-of-the-secret-part-of-a-link-0001';

interface Kept {
  readonly name: string;
  readonly value: Json;
}

export const keptPaper = {
  name: 'lamp room blue',
  value: {
    name: 'Lamp room blue',
    size: 'craft-12x12',
    caliper: '0.3 mm',
    oneWay: true,
    faces: { outside: 'lamps on dark blue', inside: 'pale stripes' },
    count: 24,
    price: { perSheet: 0.9, currency: 'EUR' },
  },
} as const satisfies Kept;

export const keptCutter = {
  name: 'bench cutter',
  value: { width: '13 in', height: '24 in', margin: '0 mm' },
} as const satisfies Kept;

export const keptConvention = {
  name: 'museum cutter',
  value: {
    rootUnit: 'in',
    userUnit: '1/96 in',
    layers: { score: { colour: '#0072B2', width: '0.1 mm' }, cut: { colour: '#000000', width: '0.1 mm' } },
  },
} as const satisfies Kept;

export const keptDesign = {
  name: 'thank-you folder',
  value: {
    title: 'Thank-you folder of the museum shop',
    notes: 'For two pairs of cards. Fold each score to and fro before it is creased hard.',
    credit: 'The Thursday craft evening',
    licence: 'CC-BY-4.0',
    spec: {
      style: 'twin-sleeve',
      stock: keptPaper.name,
      cutter: keptCutter.name,
      convention: keptConvention.name,
      dimensions: {
        panel: { width: '4 in', height: '5 3/4 in' },
        spine: '1/2 in',
        overlap: '1/2 in',
        topFlap: '2 1/2 in',
      },
    },
  },
} as const satisfies Kept;
