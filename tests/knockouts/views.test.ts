import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { viewsOfFolder } from '../../src/folders/views-of-folder.ts';
import { solved } from '../support/solved.ts';

/*
 * Pictures are rendered and looked at in single points. A twin sleeve with hems of 30 mm turned out: the front cover
 * is 100 mm by 140 mm and has the spine at its left; 30 mm at its right are the hem, which shows the inside face.
 */
const sleeve = {
  style: 'twin-sleeve',
  units: 'mm',
  dimensions: { panel: { width: 100, height: 140 }, spine: 14, hem: 30, topFlap: 60, overlap: 16 },
  stock: { width: 400, height: 400 },
  prefer: 'least-paper',
};

const circle = (place: string, offset: object, through: string) => ({
  kind: 'figure',
  on: { place, offset },
  figure: { shape: 'circle', diameter: 14 },
  through,
});

const [blue, white] = ['#89cbf0', '#ffffff'];

/** The colour of a picture's paper at points of the flat form, in millimetres from its top left corner as it is seen. */
function coloursIn(
  view: 'outside' | 'inside',
  knockouts: readonly object[],
  points: readonly (readonly [number, number])[],
) {
  const svg = viewsOfFolder(solved.spec({ ...sleeve, knockouts }), view);
  // without hatching, arrows and words: ground colours and edges alone
  const plain = svg
    .replaceAll(/<text.*?<\/text>|<circle[^>]*>(?:<\/circle>)?/gsu, '')
    .replaceAll(/url\(#[^)]*inside-face\)/gu, '#ff0000');
  const pixelsPerMm = 10;
  const { width, pixels } = new Resvg(plain, {
    dpi: 25.4 * pixelsPerMm,
    font: { loadSystemFonts: false },
  }).render();
  const face =
    /<path d="M ([\d.]+) ([\d.]+) L [^"]*" fill="[^"]*"(?: fill-rule="evenodd")? data-part="(?:front|back)"/u.exec(
      svg,
    );
  if (!face) throw new Error('the picture shows no cover');
  const boxes = [...svg.matchAll(/<path d="([^"]*)" fill="[^"]*"(?: fill-rule="evenodd")? data-part/gu)].map(
    ([, d = '']) => [...d.matchAll(/([\d.]+) ([\d.]+)/gu)].map(([, x, y]) => [Number(x), Number(y)] as const),
  );
  const all = boxes.flat();
  const [left, right] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))];
  const top = Math.min(...all.map(([, y]) => y));
  const ratio = (right - left) / 214;
  return points.map(([x, y]) => {
    const at = [left + x * ratio, top + y * ratio].map((value) => Math.round(value * pixelsPerMm));
    const start = 4 * ((at[1] ?? 0) * width + (at[0] ?? 0));
    return `#${[0, 1, 2].map((each) => (pixels[start + each] ?? 0).toString(16).padStart(2, '0')).join('')}`;
  });
}

describe('openings in pictures', () => {
  // seen from outside the front cover is at the right: the spine ends at 114, the cover at 214, its hem begins at 184
  it('show the layer beneath', () => {
    const hole = [circle('left hem', { up: 45 }, 'seen-layer')];
    expect(
      coloursIn(
        'outside',
        [],
        [
          [199, 25],
          [199, 14],
        ],
      ),
    ).toEqual(['#ff0000', '#ff0000']);
    expect(
      coloursIn('outside', hole, [
        [199, 25],
        [199, 14],
      ]),
    ).toEqual([blue, '#ff0000']);
  });

  it('show nothing where every layer is cut, from both sides', () => {
    const window = [circle('front', {}, 'every-layer')];
    // the middle of `front`, which is 70 mm wide, and 10 mm beside it
    expect(
      coloursIn('outside', window, [
        [149, 70],
        [149, 58],
      ]),
    ).toEqual([white, blue]);
    // from inside the front pocket is at the left
    expect(
      coloursIn('inside', window, [
        [65, 70],
        [65, 58],
      ]),
    ).toEqual([white, blue]);
    // cut in the cover alone it shows the inside face of the flap behind
    expect(coloursIn('outside', [circle('front', {}, 'seen-layer')], [[149, 70]])).toEqual(['#ff0000']);
    expect(coloursIn('inside', [circle('front', {}, 'seen-layer')], [[65, 70]])).toEqual([blue]);
  });

  it('carry numbers where the checks found something, and the legend says what', () => {
    const near = [
      circle('front', { left: 7.5 }, 'seen-layer'),
      circle('front', { right: 7.5 }, 'seen-layer'),
    ];
    const svg = viewsOfFolder(solved.spec({ ...sleeve, knockouts: near }), 'outside');
    expect(svg.match(/data-name="findings"/gu)).toHaveLength(1);
    expect(svg).toContain('web of 1 mm: not to be cut');
    const good = viewsOfFolder(
      solved.spec({ ...sleeve, knockouts: [circle('front', {}, 'seen-layer')] }),
      'outside',
    );
    expect(good).not.toContain('data-name="findings"');
  });
});
