import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { tempFolder } from '../src/temp-folder.ts';
import { poppler, testWithPoppler } from '../support/poppler.ts';
import { axe, overhang, settled } from './browser.ts';
import { isLeftOut, whyLeftOut } from './serve-page.ts';
import { cut, folds, forbidden, refused, unreadable, warned } from './specs.ts';
import { lay, patiently, unfold, withPage } from './with-page.ts';

const states = { empty: undefined, warned, refused, unreadable, cut, forbidden } as const;

describe.skipIf(isLeftOut)(`every state of the maker’s page${whyLeftOut}`, { timeout: 180_000 }, () => {
  const { openApart, url } = withPage();

  const showState = async (page: Page, spec: unknown): Promise<void> => {
    if (spec !== undefined) await lay(page, url(), spec);
    await settled(page);
    if (spec === cut) await page.locator('.knockout').first().waitFor();
    await unfold(page);
    if (await page.locator('.take .more').count()) await page.locator('.from-service').waitFor();
  };

  test('has nothing that axe finds wrong, in either theme', async () => {
    const { page, complaints, context } = await openApart({ colorScheme: 'light' });
    const look = async (name: string) => {
      expect(await axe(page), name).toEqual([]);
      // the other theme differs in its colours alone
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await axe(page, ['color-contrast']), `${name}, dark`).toEqual([]);
      await page.emulateMedia({ colorScheme: 'light' });
    };
    for (const [name, spec] of Object.entries(states)) {
      await showState(page, spec);
      await look(name);
    }
    await lay(page, url(), folds);
    await page.getByRole('button', { name: 'Larger: Half open' }).click();
    await look('a picture on its own');
    expect(complaints).toEqual([]);
    await page.keyboard.press('Escape');
    await page.evaluate(() => document.querySelector('.slip label')?.remove());
    expect(await axe(page), 'axe finds nothing at all').not.toEqual([]);
    await context.close();
  });

  test('never scrolls sideways on 320 pixels, in any language', async () => {
    const { page, context } = await openApart({ viewport: { width: 320, height: 640 } });
    for (const language of ['en', 'de', 'fr', 'es']) {
      await page.getByLabel(/^(?:Language|Sprache|Langue|Idioma)$/u).selectOption(language);
      await expect.poll(() => page.evaluate(() => document.documentElement.lang), patiently).toBe(language);
      // other languages differ in how long their words are
      for (const [name, spec] of Object.entries(language === 'en' ? states : { refused, cut })) {
        await showState(page, spec);
        expect(await overhang(page), `${name} in ${language}`).toEqual([]);
      }
    }
    await context.close();
  });

  test('speaks the reader’s language, and none of the core’s English is left', async () => {
    const { page, context } = await openApart({ locale: 'de-AT' }, warned);
    await settled(page);
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
    expect(await page.locator('h2').allTextContents()).toContain('Vor dem Schneiden');
    for (const spec of [warned, cut, forbidden]) {
      await lay(page, url(), spec);
      expect(await page.locator('.table [lang=en]').allTextContents()).toEqual([]);
    }
    await context.close();
  });

  testWithPoppler(
    'prints what the maker needs on white paper, with nothing cut off, whatever the theme',
    async () => {
      const { page, context } = await openApart({ colorScheme: 'dark' }, cut);
      await settled(page);
      const folder = await tempFolder();
      const file = join(folder, 'print.pdf');
      await page.pdf({ path: file, preferCSSPageSize: true, format: 'A4', printBackground: true });
      await context.close();
      const text = poppler('pdftotext', '-layout', file, '-');
      for (const words of [
        'Closed 120',
        'The open sheet',
        'Half open',
        'Before you cut',
        'Where to score',
        'Spine',
      ])
        expect(text).toContain(words);
      for (const words of ['What goes in?', 'Take it with you', 'Larger', 'Undo'])
        expect(text).not.toContain(words);
      expect(text.trim().split('\f').length).toBeLessThanOrEqual(4);
      // 127 dots to the inch are five to the millimetre
      poppler('pdftoppm', '-r', '127', '-gray', '-png', file, join(folder, 'page'));
      const pages = readdirSync(folder).filter((name) => name.endsWith('.png'));
      for (const name of pages) {
        const { width, height, data } = PNG.sync.read(readFileSync(join(folder, name)));
        const isWhite = (x: number, y: number) => (data[4 * (y * width + x)] ?? 0) > 250;
        const margin = 11 * 5; // of 12 mm, less a millimetre
        const strip = Array.from({ length: height }, (_, y) =>
          Array.from({ length: margin }, (_, x) => isWhite(x, y) && isWhite(width - 1 - x, y)),
        ).flat();
        expect(strip.every(Boolean), name).toBe(true);
      }
    },
  );
});
