import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axe, settled, specIn } from './browser.ts';
import { isLeftOut, whyLeftOut } from './serve-page.ts';
import { cut, folds } from './specs.ts';
import { downloaded, patiently, withPage } from './with-page.ts';

const ownFont = fileURLToPath(import.meta.resolve('@fontsource/alata/files/alata-latin-400-normal.woff'));

interface Knockout {
  readonly on: { readonly place: string; readonly offset?: object };
  readonly figure: object;
}

const knockoutsIn = async (page: Page): Promise<readonly Knockout[]> =>
  ((await specIn(page)) as { readonly knockouts?: readonly Knockout[] }).knockouts ?? [];

const boxOf = async (grip: Locator) => {
  await grip.scrollIntoViewIfNeeded();
  const box = await grip.boundingBox();
  if (!box) throw new Error('there is nothing to take hold of');
  return box;
};

async function drag(page: Page, grip: Locator, across: number, down: number): Promise<void> {
  const { x, y, width, height } = await boxOf(grip);
  const [left, top] = [x + width / 2, y + height / 2];
  await page.mouse.move(left, top);
  await page.mouse.down();
  await page.mouse.move(left + across, top + down, { steps: 4 });
  await page.mouse.up();
  await settled(page);
}

/** A knockout of a kind is added to what is there. */
async function add(page: Page, kind: string): Promise<void> {
  await page.locator('.add-knockout select').selectOption(kind);
  await page.locator('.add-knockout button').click();
}

describe.skipIf(isLeftOut)(`what is cut out on the maker’s page${whyLeftOut}`, { timeout: 180_000 }, () => {
  const { open, post, drawnByService } = withPage();

  test('is placed by numbers, by keys and by dragging', async () => {
    const { page, complaints } = await open(folds);
    await settled(page);
    await page.getByRole('button', { name: 'Cut something out' }).click();
    await add(page, 'heart');
    const form = page.getByRole('group', { name: '1. heart' });
    await form.getByLabel('Width').fill('3 cm');
    await form.getByLabel('Moved down by').fill('-12');
    const grip = page.getByRole('button', { name: /^Move the heart/u }).first();
    await grip.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    await settled(page);
    expect((await knockoutsIn(page))[0]?.on.offset).toEqual({ up: '12 mm', right: '11 mm' });
    const from = await boxOf(grip);
    await drag(page, grip, -30, 20);
    const to = await boxOf(grip);
    // it goes by whole millimetres, of which each is more than a pixel
    expect(Math.abs(to.x - from.x + 30)).toBeLessThan(2);
    expect(Math.abs(to.y - from.y - 20)).toBeLessThan(2);
    // one drag is one thing to undo
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await settled(page);
    expect((await knockoutsIn(page))[0]?.on.offset).toEqual({ up: '12 mm', right: '11 mm' });

    await form.getByLabel('Where').selectOption('front pocket');
    await form.getByLabel('Placed at').selectOption('bottom right');
    await settled(page);
    const inside = page.locator('.print-inside .grip');
    const before = await boxOf(inside);
    await drag(page, inside, -25, -15);
    const after = await boxOf(inside);
    expect(Math.abs(after.x - before.x + 25)).toBeLessThan(2);
    expect(Math.abs(after.y - before.y + 15)).toBeLessThan(2);
    await form.getByRole('button', { name: 'Leave it out: 1. heart' }).click();
    await settled(page);
    expect(await specIn(page)).toEqual(folds);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('is lettering, drawings of one’s own, repeats, inlays and frames, as the service draws them', async () => {
    const { page, complaints } = await open(cut);
    await settled(page);
    await page.locator('.step-words', { hasText: 'Step 1' }).waitFor();
    const letters = page.getByRole('group', { name: '2. lettering' });
    await letters.getByLabel('Letters', { exact: true }).selectOption('own');
    await letters.getByLabel('Font file').setInputFiles(ownFont);
    await expect
      .poll(async () => (await knockoutsIn(page))[1]?.figure, patiently)
      .toMatchObject({ lettering: 'Light', font: { file: readFileSync(ownFont, 'base64') } });

    await add(page, 'artwork');
    const artwork = page.getByRole('group', { name: '3. own drawing (SVG)' });
    const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 20"><path d="M0 0H10L5 20Z"/></svg>';
    const file = { name: 'beam.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(svg) };
    await artwork.getByLabel('SVG file of your own').setInputFiles(file);
    await artwork.getByLabel('Where').selectOption('back cover');
    await artwork.getByText('Turn, depth, repeats, inlay').click();
    await artwork.getByLabel('Repeated').selectOption('edge');
    await artwork.getByLabel('Length of the row').fill('60');
    await artwork.getByLabel('Height', { exact: true }).fill('15');
    await artwork.getByText('Everything else, as text').click();
    const text = artwork.getByLabel('This knockout as JSON');
    await text.fill(
      (await text.inputValue()).replace(
        '"back cover"',
        '"back cover", "anchor": "top", "offset": { "down": "30 mm" }',
      ),
    );
    await settled(page);
    expect((await knockoutsIn(page))[2]).toMatchObject({
      on: { place: 'back cover', anchor: 'top', offset: { down: '30 mm' } },
      figure: { artwork: svg, height: '15 mm' },
      repeat: { repeat: 'edge', count: 3, length: '60 mm' },
    });
    await text.fill('{ not yet');
    await artwork.getByText('This is not JSON yet.').waitFor();

    const drawing = await downloaded(page, () =>
      page.getByRole('button', { name: /^Drawing for the machine/u }).click(),
    );
    expect(drawing.toString()).toContain('id="knockout"');
    expect(drawing.equals(await drawnByService(await specIn(page)))).toBe(true);
    for (const [button, piece] of [
      ['Inlay of the circle (SVG)', 'inlay-1'],
      ['Frame around the circle (SVG)', 'frame-1'],
    ] as const) {
      const own = await downloaded(page, () => page.getByRole('button', { name: button }).click());
      expect(own.equals(await post(`folders/svg?piece=${piece}`, await specIn(page))), piece).toBe(true);
    }
    // what the checks say has the same number beside it and in the pictures
    const numbers = await page.locator('.warnings .number').allTextContents();
    expect(numbers.length).toBeGreaterThan(0);
    expect(await page.locator('.print-open .finding text').allTextContents()).toEqual(numbers);
    expect(await axe(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('is refused with what helps, at a size or a drawing that cannot be', async () => {
    const { page } = await open(folds);
    await settled(page);
    await page.getByRole('button', { name: 'Cut something out' }).click();
    await add(page, 'artwork');
    const buffer = Buffer.from(
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><text>Light</text></svg>',
    );
    const own = page.getByLabel('SVG file of your own');
    await own.setInputFiles({ name: 'text.svg', mimeType: 'image/svg+xml', buffer });
    await page.getByText('a cutter has no fonts. What helps: turn text into paths').waitFor();
    await own.setInputFiles({
      name: 'big.svg',
      mimeType: 'image/svg+xml',
      buffer: Buffer.alloc(300_000, ' '),
    });
    await page.getByText('This file is larger than 200 KiB.').waitFor();
    await page.getByLabel('What', { exact: true }).first().selectOption('circle');
    await page.getByLabel('Across', { exact: true }).fill('118');
    await page.getByText('Turn, depth, repeats, inlay').click();
    await page.getByLabel('every layer, as a window').check();
    await page.locator('.headline', { hasText: 'It must not be cut like this.' }).waitFor();
    await page.locator('.take .fault').waitFor();
    expect(await page.getByRole('button', { name: /SVG/u }).count()).toBe(0);
    await page.close();
  });
});
