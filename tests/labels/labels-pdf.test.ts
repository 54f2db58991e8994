import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { build } from '../src/build.ts';
import { tempFolder } from '../src/temp-folder.ts';
import { describeWithPoppler, poppler, sizeOf, wordsOf } from '../support/poppler.ts';
import { evening } from './evening.ts';

const ask = async (query: string, payload: object) => {
  const app = await build({}, { clock: () => new Date('2026-11-28T18:30:00Z') });
  return app.inject({ method: 'POST', url: `/v1/sets/labels?${query}`, payload });
};

async function pdfOf(query: string, payload: object = evening): Promise<{ file: string; bytes: Buffer }> {
  const reply = await ask(query, payload);
  expect([reply.statusCode, reply.headers['content-type']]).toEqual([200, 'application/pdf']);
  const file = join(await tempFolder(), 'labels.pdf');
  writeFileSync(file, reply.rawPayload);
  return { file, bytes: reply.rawPayload };
}

describeWithPoppler('labels and cards as a PDF', () => {
  test('are tagged, their fonts embedded, every kit there once and a card for each', async () => {
    const { file } = await pdfOf('');
    expect(poppler('pdfinfo', file)).toMatch(/Tagged: +yes/u);
    for (const line of poppler('pdffonts', file).trim().split('\n').slice(2))
      expect(line).toMatch(/ yes +yes +yes /u);
    const text = poppler('pdftotext', file, '-');
    for (let kit = 1; kit <= 9; kit++) expect(text.split(`${kit} of 9\n`)).toHaveLength(2);
    const times = Number(/Print this page (\d+) times, for 9 kits/u.exec(text)?.[1]);
    const cards = wordsOf(file)
      .flatMap(({ words }) => words)
      .filter(({ text: word }) => word === 'Blank').length;
    expect(times * cards).toBeGreaterThanOrEqual(9);
    expect((times - 1) * cards).toBeLessThan(9);
  });

  test.each(['a4', 'letter'].flatMap((paper) => ['standard', 'large'].map((print) => ({ paper, print }))))(
    'on $paper in $print print, no word is cut off',
    async ({ paper, print }) => {
      const pages = wordsOf((await pdfOf(`paper=${paper}&print=${print}`)).file);
      const margin = (12 / 25.4) * 72 - 0.01;
      for (const { width, height, words } of pages) {
        expect(words.length).toBeGreaterThan(10);
        for (const { left, right, top, bottom, text } of words) {
          expect(left, text).toBeGreaterThan(margin);
          expect(right, text).toBeLessThan(width - margin);
          expect(top, text).toBeGreaterThan(margin);
          expect(bottom, text).toBeLessThan(height - margin + 2);
        }
      }
    },
  );

  test('in two columns, no word crosses the line between them', async () => {
    const [page] = wordsOf((await pdfOf('')).file);
    const middle = (page?.width ?? 0) / 2;
    for (const { left, right, text } of page?.words ?? [])
      expect(left < middle && right > middle, text).toBe(false);
  });

  test('large print is at least 16 points', async () => {
    const words = wordsOf((await pdfOf('print=large')).file).flatMap((page) => page.words);
    for (const word of words) expect(sizeOf(word), word.text).toBeGreaterThan(15.9);
  });

  test('the same set at the same time gives the same bytes', async () => {
    const [one, other] = [await pdfOf(''), await pdfOf('')];
    expect(one.bytes.equals(other.bytes)).toBe(true);
  });
});

test('a piece that cannot be made is refused with its place in the set', async () => {
  const [folder, ...others] = evening.pieces;
  const reply = await ask('', { ...evening, papers: [{ size: 'iso-a5' }], pieces: [folder, ...others] });
  expect(reply.statusCode).toBe(422);
  expect(reply.json().errors[0].path).toMatch(/^\/(?:pieces\/0|papers\/0)/u);
});

test('more kits than a file can hold are refused, and how many it can', async () => {
  const reply = await ask('', {
    ...evening,
    pieces: evening.pieces.slice(1, 2),
    ribbon: undefined,
    kits: 1001,
  });
  expect(reply.statusCode).toBe(422);
  expect(reply.json().errors).toEqual([
    {
      path: '/kits',
      message: '1001 kits are more than one file of labels has',
      remedy: 'ask for at most 1000 kits at a time',
    },
  ]);
});
