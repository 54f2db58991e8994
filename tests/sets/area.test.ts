import { expect, test } from 'vitest';
import { setSpec } from '../../shared/sets/set-spec.ts';
import { cutPieces } from '../../src/sets/cut-pieces.ts';

test('what is cut out of a piece, and of its frame, is no part of its area', async () => {
  const hole = { shape: 'circle', diameter: '60 mm' };
  const set = setSpec.parse({
    kits: 1,
    units: 'mm',
    papers: [{ size: 'iso-a3', grammage: 200 }],
    pieces: [
      {
        name: 'card',
        make: {
          style: 'card-base',
          units: 'mm',
          dimensions: { panel: { width: 105, height: 148 } },
          knockouts: [
            {
              kind: 'figure',
              on: { place: 'front' },
              figure: hole,
              inlay: { margin: '5 mm', frame: { width: '8 mm' } },
            },
          ],
        },
      },
      { name: 'inlay', inlay: { of: 'card', name: 'inlay-1' } },
      { name: 'frame', inlay: { of: 'card', name: 'frame-1' } },
    ],
  });
  const [card, inlay, frame] = (await cutPieces(set)).map(({ area }) => area / 1e12);
  const disc = (diameter: number) => (Math.PI * diameter ** 2) / 4;
  // circles are cubics, which are right to about 0.03 %
  expect(card).toBeCloseTo(2 * 105 * 148 - disc(60), -1);
  expect(inlay).toBeCloseTo(disc(60 + 2 * 5), -1);
  expect(frame).toBeCloseTo(disc(60 + 2 * 8) - disc(60), -1);
});
