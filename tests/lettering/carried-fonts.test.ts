import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { islandsOf } from '../../shared/knockouts/bridges/islands.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { carriedFonts } from '../../shared/lettering/carried-fonts.ts';
import { carriedFontFile, FontMissing } from '../../src/lettering/carried-font-file.ts';
import { fontShelf } from '../../src/lettering/font-shelf.ts';
import { carriedFont, write } from '../support/fonts.ts';
import { paperPieces } from '../support/paper-pieces.ts';

const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789'];

describe('each carried font', () => {
  test.each(carriedFonts)(
    '$name comes with the licence that is told',
    async ({ source, licence, copyright }) => {
      const text = await readFile(fileURLToPath(import.meta.resolve(`${source}/LICENSE`)), 'utf8');
      expect(licence).toBe('SIL Open Font License 1.1');
      expect(text).toContain('SIL Open Font License, Version 1.1');
      expect(text).toContain(copyright);
    },
  );

  test.each(carriedFonts)(
    '$name: no letter or figure loses a counter when bridges are on',
    async ({ name }) => {
      const font = await carriedFont(name);
      const loose = letters.filter((lettering) => {
        const { shape, islands } = write(font, { lettering, height: mm(25) });
        return islands.length > 0 || islandsOf(shape).length > 0 || paperPieces(shape) !== 1;
      });
      expect(loose).toEqual([]);
    },
  );

  test('without bridges both ways of looking see the counters fall', async () => {
    const font = await carriedFont('plain');
    const counted = ['O', 'B', 'I', 'i'].map((lettering) => {
      const { shape, islands } = write(font, { lettering, height: mm(25), bridges: 'none' });
      return [lettering, islands.length, paperPieces(shape) - 1];
    });
    expect(counted).toEqual([
      ['O', 1, 1],
      ['B', 2, 2],
      ['I', 0, 0],
      ['i', 0, 0],
    ]);
  });
});

describe('the shelf of fonts', () => {
  test('has each font once, however often it is asked for', async () => {
    const { shelf, faults } = await fontShelf([undefined, 'plain', 'script', 'script']);
    expect([...shelf.keys()]).toEqual(['plain', 'script']);
    expect(faults.size).toBe(0);
    const again = await fontShelf(['plain']);
    expect(again.shelf.get('plain')).toBe(shelf.get('plain'));
  });

  test('keeps a file of the user’s own by its content', async () => {
    const file = Buffer.from(await carriedFontFile('stencil')).toString('base64');
    const first = await fontShelf([{ file }]);
    const second = await fontShelf([{ file: `${file}` }]);
    expect(first.faults.size).toBe(0);
    expect([...second.shelf.values()]).toEqual([...first.shelf.values()]);
    expect([...second.shelf.values()][0]).toBe([...first.shelf.values()][0]);
  });

  test('says what is wrong with a file, and where it stands in the spec', async () => {
    const { shelf, faults } = await fontShelf([{ file: Buffer.from('hello').toString('base64') }]);
    expect(shelf.size).toBe(0);
    expect([...faults.values()]).toEqual([
      {
        path: ['font', 'file'],
        message: 'the file is no font',
        remedy: 'give a TTF, OTF or WOFF file',
      },
    ]);
  });

  test('a font that is not installed is named', async () => {
    const nowhere = () => 'file:///nowhere/at/all.woff';
    await expect(carriedFontFile('plain', nowhere)).rejects.toThrow(FontMissing);
    await expect(carriedFontFile('plain', nowhere)).rejects.toThrow('"plain"');
  });
});
