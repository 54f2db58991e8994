import type { Example } from './example.ts';
import { knownByHeart } from './example-specs.ts';

/*
 * Knockouts of the lighthouse museum's volunteers. All of it is invented.
 */

const window = {
  kind: 'figure',
  on: { place: 'front cover', offset: { up: '15 mm' } },
  figure: { shape: 'heart', width: '30 mm' },
  through: 'every-layer',
  inlay: { frame: { width: '4 mm' } },
} as const;

const withKnockouts = (knockouts: readonly object[]) =>
  ({ ...knownByHeart.body, knockouts }) as NonNullable<Example['body']>;

export const heartWindow: Example = {
  name: 'heart-window',
  summary: 'Craft evening: a heart through every layer of the front cover, with an inlay and a frame',
  body: withKnockouts([window]),
};

export const notchAndCorners: Example = {
  name: 'notch-and-corners',
  summary: 'Craft evening: a thumb notch at the front pocket and rounded corners',
  body: withKnockouts([
    { kind: 'thumb-notch', pocket: 'front pocket' },
    { kind: 'rounded-corners', place: 'front cover', radius: '8 mm' },
  ]),
};

export const unknownPlace: Example = {
  name: 'unknown-place',
  summary: 'Refused: no place is called so; the reply names those that there are',
  body: withKnockouts([{ ...window, on: { place: 'front covr' } }]),
};
