import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tileStarts } from '../../src/guide/pdf-template.ts';
import { build } from '../src/build.ts';
import { tempFolder } from '../src/temp-folder.ts';
import { longestRuns } from '../support/longest-runs.ts';
import { describeWithPoppler, poppler, sizeOf, wordsOf } from '../support/poppler.ts';
import { easySleeve } from '../support/sleeves.ts';

async function pdfFile(query: string): Promise<{ file: string; folder: string; bytes: Buffer }> {
  const app = await build({}, { clock: () => new Date('2026-11-25T18:30:00Z') });
  const reply = await app.inject({
    method: 'POST',
    url: `/v1/folders/guide?format=pdf${query}`,
    payload: easySleeve,
  });
  expect(reply.headers['content-type']).toBe('application/pdf');
  const folder = await tempFolder();
  const file = join(folder, 'guide.pdf');
  writeFileSync(file, reply.rawPayload);
  return { file, folder, bytes: reply.rawPayload };
}

describeWithPoppler('the maker’s sheet as a PDF', () => {
  test('is tagged, in English, with its fonts embedded and its text to be read', async () => {
    const { file } = await pdfFile('');
    expect(poppler('pdfinfo', file)).toMatch(/Tagged: +yes/u);
    const fonts = poppler('pdffonts', file).trim().split('\n').slice(2);
    expect(fonts.length).toBeGreaterThan(0);
    for (const line of fonts) expect(line).toMatch(/ yes +yes +yes /u);
    const text = poppler('pdftotext', '-layout', file, '-');
    for (const words of ['Scores from one home edge', '130', 'Safety', 'Fold by fold'])
      expect(text).toContain(words);
    const structure = poppler('pdfinfo', '-struct', file);
    for (const tag of ['H1', 'H2', 'Figure', 'Table', 'TR', 'TH', 'TD']) expect(structure).toContain(tag);
  });

  test('the same spec at the same time gives the same bytes', async () => {
    const [one, other] = [await pdfFile('&template=yes'), await pdfFile('&template=yes')];
    expect(one.bytes.equals(other.bytes)).toBe(true);
  });

  test.each(['a4', 'letter'])('printed on %s, 100 mm is 100 mm, and so is every score', async (paper) => {
    const { file, folder } = await pdfFile(`&template=yes&paper=${paper}`);
    const pages = Number(/Pages: +(\d+)/u.exec(poppler('pdfinfo', file))?.[1]);
    const text = poppler('pdftotext', '-layout', file, '-').split('\f');
    const first = text.findIndex((page) => page.includes('row 1 of')) + 1;
    expect(first).toBeGreaterThan(1);
    expect(pages - first + 1).toBe(4); // 270 × 320 mm on two by two pages
    // 254 dots to the inch are ten to the millimetre
    poppler(
      'pdftoppm',
      '-r',
      '254',
      '-gray',
      '-png',
      '-f',
      `${first}`,
      '-l',
      `${first}`,
      file,
      join(folder, 'page'),
    );
    const page = readdirSync(folder).find((name) => name.startsWith('page')) ?? '';
    const runs = longestRuns(join(folder, page));
    // the rule stands 24 mm below the margin's top, less 5
    const rule = runs.slice(10 * 25, 10 * 35).filter(({ length }) => length > 90);
    expect(rule.some(({ length }) => Math.abs(length - 100) <= 0.3)).toBe(true);
    expect(rule.some(({ length }) => Math.abs(length - 101.6) <= 0.3)).toBe(true);
    // the outline's top edge begins where the margin ends; the template lies 36 mm down
    const top = runs.findIndex(({ length }, y) => y > 350 && length > 150);
    expect(top / 10).toBeCloseTo(36, 0);
  });

  test('large print has no text below 16 points, not even in pictures', async () => {
    const { file } = await pdfFile('&print=large&machine=no');
    const words = wordsOf(file).flatMap((page) => page.words);
    expect(words.length).toBeGreaterThan(500);
    for (const word of words) expect(sizeOf(word), word.text).toBeGreaterThan(15.9);
  });
});

test('a template that nobody could join is refused, and the sheet without it is not', async () => {
  const app = await build();
  const panel = { width: '900 mm', height: '900 mm' };
  const stock = { width: '2000 mm', height: '2000 mm' };
  const payload = {
    ...easySleeve,
    stock,
    dimensions: { ...easySleeve.dimensions, panel, topFlap: '450 mm' },
  };
  const ask = (template: string) =>
    app.inject({ method: 'POST', url: `/v1/folders/guide?format=pdf&template=${template}`, payload });
  const reply = await ask('yes');
  expect(reply.statusCode).toBe(422);
  expect(reply.json().errors[0]).toMatchObject({
    message: expect.stringMatching(/^the blank in real size would take \d{2} pages$/u),
    remedy: 'leave the template out, or make a blank of at most 48 pages',
  });
  expect((await ask('no')).statusCode).toBe(200);
});

describe('the pages of a template', () => {
  test.each([
    [100, 186, [0]],
    [186, 186, [0]],
    [187, 186, [0, 176]],
    [362, 186, [0, 176]],
    [363, 186, [0, 176, 352]],
  ])('%d mm on pages of %d mm', (length, page, starts) => {
    expect(tileStarts(length, page)).toEqual(starts);
  });
});
