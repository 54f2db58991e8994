import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { inks, papers } from '../../shared/views/ink.ts';
import { wholeViews } from '../../shared/views/view-name.ts';
import { pictureOf } from '../../shared/views/views.ts';
import { writePicture } from '../../src/svg/write-picture.ts';
import { exampleNames, folded, shown, written } from './shown.ts';

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  text: string;
}

/** Every element of a well-formed file; throws for any other. */
function elementsOf(svg: string): readonly Element[] {
  const found: Element[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => found.push({ name, attributes, text: '' }));
  parser.on('text', (words) => {
    const last = found.at(-1);
    if (last) last.text += words;
  });
  parser.write(svg).close();
  return found;
}

const all = (elements: readonly Element[], name: string) => elements.filter((each) => each.name === name);

describe.each(exampleNames)('%s', (name) => {
  test.each(wholeViews)('%s is well formed, and one image with a title and a description', (view) => {
    const elements = elementsOf(written(name, view));
    const [root] = elements;
    expect(root?.attributes).toMatchObject({ xmlns: 'http://www.w3.org/2000/svg', role: 'img' });
    const titles = all(elements, 'title');
    const descriptions = all(elements, 'desc');
    expect([titles.length, descriptions.length]).toEqual([1, 1]);
    expect(root?.attributes['aria-labelledby']).toBe(
      `${titles[0]?.attributes.id} ${descriptions[0]?.attributes.id}`,
    );
    expect(titles[0]?.text).toMatch(/^Twin sleeve/);
    expect(descriptions[0]?.text).toMatch(/^[A-Z].{60,}\.$/s);
    const ids = elements.flatMap(({ attributes }) => attributes.id ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    const size = [root?.attributes.width, root?.attributes.height].map((each) => each?.replace(/mm$/, ''));
    expect(root?.attributes.viewBox).toBe(`0 0 ${size.join(' ')}`);
    expect(written(name, view)).not.toMatch(/NaN|undefined|Infinity|e-\d|<script|style=/);
  });
});

test('the reader of these tests refuses what is not well formed', () => {
  expect(() => elementsOf(written('mitred', 'inside').replace('</svg>', ''))).toThrow();
});

test('the same spec gives the same bytes, however often and after whatever else', () => {
  const first = written('a6-on-a3', 'all');
  written('hems-in', 'steps');
  expect(written('a6-on-a3', 'all')).toBe(first);
});

test('the ids of two views differ, so that both can stand on one page', () => {
  const ids = (['outside', 'inside'] as const).flatMap((view) =>
    elementsOf(written('mitred', view)).flatMap(({ attributes }) => attributes.id ?? []),
  );
  expect(ids.length).toBeGreaterThan(4);
  expect(new Set(ids).size).toBe(ids.length);
});

test('the description says which part shows which face, and which way it points', () => {
  expect(shown('hems-out', 'outside').description).toBe(
    'The flat sleeve after it was turned over left to right. ' +
      'The front cover, the back cover and the spine show the outside face, print upright. ' +
      'The hems show the inside face, print upright.',
  );
  expect(shown('hems-in', 'inside').description).toBe(
    'The flat sleeve as it lies when it has been folded. ' +
      'The bottom flap and the top flap show the outside face, print upside down.',
  );
  expect(shown('hems-out', 'inside').description).toContain(
    'The corners show the outside face, print on its left side or on its right side.',
  );
  expect(shown('head-to-foot', 'outside').description).toContain(
    'The hems show the inside face, print upside down.',
  );
});

test('steps are told in plain sentences', () => {
  const { description } = shown('mitred', 'steps');
  expect(description).toMatch(
    /^Step 1: Lay the sheet with its inside face up\. Fold the left hem behind, away from you\./,
  );
  expect(description).toContain('Slip the left hem of the top flap over the left hem of the bottom flap.');
  expect(description).toContain(
    'Step 3: Glue the hems down: a line 1/4 in (6.35 mm) wide, ≈ 1/16 in (1.5 mm) inside their edges. ' +
      'Leave the hems of the top flap free where the bottom flap will be slipped in.',
  );
  expect(description).toContain('Step 8: Glue the seam down: a line 1/4 in (6.35 mm) wide,');
  expect(description).toContain('Keep it off the panels behind, or the pockets are shut.');
  expect(description).toContain('Step 10: Bend the spine at the back toward you, to a right angle.');
  expect(description).toMatch(
    /Step 11: Slide (\d) cards with their envelopes into the front pocket and \1 into the back pocket, through their open ends\. Then close the folder\./,
  );
  const metric = shown('a6-on-a3', 'steps').description;
  expect(metric).toContain('Glue the corners down: a line 6.35 mm (1/4 in) wide, 3 mm inside their edges.');
  expect(metric).toContain('Glue the hems down: a line 6.35 mm (1/4 in) wide, 1.5 mm inside their edges.');
  expect(metric).toContain('Glue the seam down: two lines 6.35 mm (1/4 in) wide, 1.5 mm inside its edges.');
  expect(shown('hems-in', 'steps').description).toContain(
    'Leave the hems of the bottom flap free where the top flap will be slipped in.',
  );
});

test('a folder without contents has nothing to slide in, a flat seam nothing to leave free', () => {
  expect(shown('very-wide', 'steps').description).not.toContain('Slide');
  expect(shown('flat-seam', 'steps').description).not.toContain('free');
});

test('captions give the closed size in the measure of the spec first', () => {
  const texts = elementsOf(written('hems-out', 'closed')).filter(({ name }) => name === 'text');
  const words = texts.map(({ text }) => text);
  expect(words).toContain('4 in (101.6 mm)');
  expect(words).toContain('5 3/4 in (146.05 mm)');
  expect(words).toContain('outside face of the sheet');
  expect(words).toContain('inside face of the sheet');
});

test('a step that a folder does not have has no picture', () => {
  expect(pictureOf(folded('mitred'), 'step-11')).toBeDefined();
  expect(pictureOf(folded('mitred'), 'step-12')).toBeUndefined();
});

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function contrastOnWhite(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 1.05 / (0.2126 * r + 0.7152 * g + 0.0722 * b + 0.05);
}

test('every line stands out from white paper by 3 to 1 (WCAG 2.2, 1.4.11)', () => {
  const colours = [...Object.values(inks).map(({ colour }) => colour), papers.inside.hatch?.colour ?? ''];
  for (const colour of colours) expect(contrastOnWhite(colour), colour).toBeGreaterThanOrEqual(3);
  // sky blue, of which check values say 2.31
  expect(contrastOnWhite('#56B4E9')).toBeCloseTo(2.31, 1);
});

test('the two faces differ in tone and in pattern, and no two kinds of line look alike', () => {
  expect(papers.outside.hatch).toBeUndefined();
  expect(papers.inside.hatch).toBeDefined();
  expect(contrastOnWhite(papers.outside.ground) / contrastOnWhite(papers.inside.ground)).toBeGreaterThan(1.5);
  const looks = Object.values(inks).map(({ width, dashes }) => `${width} ${dashes.join(' ')}`);
  expect(new Set(looks).size).toBe(looks.length);
});

test('what is written is what the picture holds', () => {
  const picture = shown('hems-out', 'inside');
  const faces = elementsOf(writePicture(picture)).filter(
    ({ attributes }) => attributes['data-paper'] !== undefined && attributes.fill !== '#000000',
  );
  for (const { attributes } of faces)
    expect(attributes.fill?.toUpperCase()).toBe(
      attributes['data-paper'] === 'inside' ? 'URL(#INSIDE-INSIDE-FACE)' : papers.outside.ground,
    );
  expect(faces.length).toBeGreaterThan(10);
});
