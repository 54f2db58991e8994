import { describe, expect, test } from 'vitest';
import { anchors } from '../../shared/knockouts/anchors.ts';
import type { FoldedAnswer, Grip } from '../../src/page/ask/answer.ts';
import { methods } from '../../src/page/ask/methods.ts';
import { prepareFor } from '../../src/page/ask/tools.ts';

const contents = { item: { size: 'iso-a6' }, perPocket: 2 };
const pieces = [
  { style: 'twin-sleeve', units: 'mm', contents },
  { style: 'gate-wallet', units: 'mm', contents },
  { style: 'tuck-box', units: 'mm', contents: { ...contents, perPocket: 20 } },
] as const;

async function foldedWith(spec: object, knockouts: readonly object[]): Promise<FoldedAnswer> {
  const whole = knockouts.length === 0 ? spec : { ...spec, knockouts };
  await prepareFor(whole);
  const answer = methods.fold(whole);
  if (answer.state !== 'folded') throw new Error(`not folded: ${JSON.stringify(answer)}`);
  return answer;
}

const gripsOf = (spec: object, knockout: (anchor: string) => object): Promise<FoldedAnswer> =>
  foldedWith(spec, anchors.map(knockout));

describe.each(pieces)('what is cut out of a $style', (spec) => {
  test('is taken hold of on the side from which its place is seen, and moves as it is told, at every anchor', async () => {
    const { plan } = await foldedWith(spec, []);
    // two from each side: one of the largest, and one that lies off the middle
    const places = (['outside', 'inside'] as const).flatMap((side) => {
      const own = plan.places.filter(({ seenFrom }) => seenFrom === side);
      return [...new Set([own[0], own.at(-1)])].filter((place) => place !== undefined);
    });
    expect(places.length).toBeGreaterThan(1);
    for (const place of places) {
      const figure = { shape: 'oval', width: '6 mm', height: '4 mm' };
      const at = (offset: object) => (anchor: string) => ({
        kind: 'figure',
        on: { place: place.name, anchor, offset },
        figure,
      });
      const still = await gripsOf(spec, at({}));
      const moved = await gripsOf(spec, at({ right: '2 mm', down: '1 mm' }));
      for (const [index, anchor] of anchors.entries()) {
        const [before, after] = [still, moved].map(({ grips }) => grips.find((grip) => grip.index === index));
        if (!before || !after) throw new Error(`no grip at ${anchor} of ${place.name}`);
        const ratio = still.sights[before.side].ratio ?? 0;
        const told = `${place.name}, ${anchor}`;
        expect(before.side, told).toBe(place.seenFrom);
        expect(after.x - before.x, told).toBeCloseTo(2 * ratio, 3);
        expect(after.y - before.y, told).toBeCloseTo(ratio, 3);
        expect(before.width, told).toBeCloseTo(6 * ratio, 3);
        expect(before.height, told).toBeCloseTo(4 * ratio, 3);
      }
      // as the reader sees the place: from the left to the right, and from the top to the bottom
      const centre = ({ x, y, width, height }: Grip) => ({ x: x + width / 2, y: y + height / 2 });
      const seen = Object.fromEntries(
        still.grips.map((grip) => [anchors[grip.index], centre(grip)] as const),
      );
      const ratio = still.sights[place.seenFrom].ratio ?? 0;
      expect((seen.right?.x ?? 0) - (seen.left?.x ?? 0)).toBeCloseTo((place.width.mm - 6) * ratio, 2);
      expect((seen.bottom?.y ?? 0) - (seen.top?.y ?? 0)).toBeCloseTo((place.height.mm - 4) * ratio, 2);
    }
  });
});
