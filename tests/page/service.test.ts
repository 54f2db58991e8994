import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, onTestFinished, test } from 'vitest';
import { commandLine } from '../../src/members/audit.ts';
import type {} from '../../src/plugins/store.ts';
import { tempFolder } from '../src/temp-folder.ts';
import { longestRuns } from '../support/longest-runs.ts';
import { poppler, testWithPoppler } from '../support/poppler.ts';
import { addressOf, axe, openContext, openPage, settled, specIn } from './browser.ts';
import { isLeftOut, servePage, whyLeftOut } from './serve-page.ts';
import { folds, warned } from './specs.ts';
import { downloaded, patiently, withPage } from './with-page.ts';

describe.skipIf(isLeftOut)(`the maker’s page and the service${whyLeftOut}`, { timeout: 180_000 }, () => {
  const { open, layOnTable, drawnByService, shared, browser } = withPage();

  testWithPoppler('make the maker’s sheet, in which 100 mm are 100 mm, and what a class needs', async () => {
    const { page, complaints } = await open(folds);
    await settled(page);
    await page.getByText('Maker’s sheet, several folders').click();
    await page.getByLabel('with the sheet in real size').check();
    const press = (name: string) => () => page.getByRole('button', { name }).click();
    const guide = await downloaded(page, press('Maker’s sheet (PDF)'));
    const folder = await tempFolder();
    const file = join(folder, 'guide.pdf');
    writeFileSync(file, guide);
    const pages = poppler('pdftotext', '-layout', file, '-').split('\f');
    const first = String(pages.findIndex((text) => text.includes('row 1 of')) + 1);
    // 254 dots to the inch are ten to the millimetre
    poppler('pdftoppm', '-r', '254', '-gray', '-png', '-f', first, '-l', first, file, join(folder, 'page'));
    const picture = readdirSync(folder).find((name) => name.startsWith('page')) ?? '';
    const rules = longestRuns(join(folder, picture)).slice(250, 350);
    expect(rules.some(({ length }) => Math.abs(length - 100) <= 0.3)).toBe(true);

    await page.getByLabel('How many folders').fill('three');
    await press('All sheets for the machine (ZIP)')();
    await page.getByText('Give a whole number').waitFor();
    await page.getByLabel('How many folders').fill('3');
    const sheets = unzipSync(await downloaded(page, press('All sheets for the machine (ZIP)')));
    expect(Object.keys(sheets).some((name) => name.endsWith('.svg'))).toBe(true);
    await page.getByLabel('Name of the class or stall').fill('Lamp room evening');
    const labels = join(folder, 'labels.pdf');
    await page.getByLabel('in large print').check();
    const asked = page.waitForRequest(/labels/u);
    writeFileSync(labels, await downloaded(page, press('Labels and cards for a class (PDF)')));
    expect(new URL((await asked).url()).searchParams.get('print')).toBe('large');
    expect(poppler('pdftotext', labels, '-')).toContain('Lamp room evening');
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('part, and the page folds on', async () => {
    const page = await layOnTable(folds);
    await page.getByText('Maker’s sheet, several folders').click();
    const pdf = page.getByRole('button', { name: 'Maker’s sheet (PDF)' });
    await pdf.waitFor();
    await shared().setOffline(true);
    try {
      await page.getByLabel('Sets in each pocket').fill('3');
      await settled(page);
      expect(await page.locator('.headline').textContent()).toContain('Holds 3 in each pocket');
      const svg = await downloaded(page, () => page.getByRole('button', { name: /SVG/u }).click());
      expect(svg.equals(await drawnByService(await specIn(page)))).toBe(true);
      await downloaded(page, () => page.getByRole('button', { name: /FOLD/u }).click());
      await pdf.click();
      await page.getByText('only it can make these files').waitFor();
      await page.locator('.keeping').getByLabel('Name to keep it by').fill('lamp room');
      await page.getByRole('button', { name: 'Keep this design' }).click();
      await page.getByText('The service cannot be reached. Everything').waitFor();
      expect(await axe(page)).toEqual([]);
    } finally {
      await shared().setOffline(false);
    }
    // back again by itself
    await page.getByRole('button', { name: 'Keep this design' }).waitFor();
  });

  test('keep, open, share and remove designs, and keep papers', async () => {
    const { page, complaints } = await open(warned);
    await settled(page);
    await page.getByText('Thickness, print and photos').click();
    const paper = page.locator('.slip', { has: page.getByRole('heading', { name: 'Which paper?' }) });
    await paper.getByLabel('Name to keep it by').fill('Harbour chart');
    await paper.getByRole('button', { name: 'Keep this paper' }).click();
    await page.getByText('Harbour chart is kept.').waitFor();
    expect(
      await page.getByLabel('Sheet', { exact: true }).locator('option', { hasText: 'Harbour chart' }).count(),
    ).toBe(1);

    const keeping = page.locator('.keeping');
    await keeping.getByLabel('Name to keep it by').fill('Lamp room');
    await keeping.getByRole('button', { name: 'Keep this design' }).click();
    await page.getByText('Lamp room is kept.').waitFor();
    await page.getByRole('button', { name: 'Clear the table' }).click();
    await page.locator('.outcome-empty').waitFor();
    await keeping.getByRole('button', { name: 'Open Lamp room' }).click();
    await settled(page);
    expect(await specIn(page)).toEqual(warned);

    await keeping.getByRole('button', { name: 'Share Lamp room' }).click();
    await keeping.getByRole('button', { name: 'Make a link' }).click();
    const link = await keeping.getByLabel(/^Whoever has this link/u).inputValue();
    await keeping.getByRole('button', { name: 'Remove Lamp room' }).click();
    expect(await axe(page)).toEqual([]);
    await keeping.getByRole('button', { name: 'No, keep it' }).click();
    const { page: guest } = await openPage(shared(), link);
    await guest.getByText('A design that was shared with you').waitFor();
    await settled(guest);
    expect(await axe(guest)).toEqual([]);
    expect(await specIn(guest)).toEqual(warned);
    await keeping.getByRole('button', { name: /^Take the link back/u }).click();
    await page.getByText('The link gives nothing any more.').waitFor();
    await guest.goto('about:blank');
    await guest.goto(link);
    await guest.getByText('This link gives nothing').waitFor();

    await keeping.getByRole('button', { name: 'Remove Lamp room' }).click();
    await keeping.getByRole('button', { name: 'Yes, remove it' }).click();
    await page.getByText('No design is kept yet.').waitFor();
    expect(complaints).toEqual([]);
    await Promise.all([page.close(), guest.close()]);
  });

  test('of a group ask for a sign-in, after which the design still lies on the table', async () => {
    const group = await servePage({ GROUP: 'true', RATE_LIMIT: '0' });
    onTestFinished(group.close);
    const added = await group.app.members.add(commandLine, 'Keeper', { scopes: ['read', 'write'] });
    if (typeof added === 'string') throw new Error(added);
    const context = await openContext(browser());
    onTestFinished(() => context.close());
    const { page } = await openPage(context, addressOf(group.url, folds));
    await settled(page);
    await page.getByText('Maker’s sheet, several folders').click();
    await page.getByRole('button', { name: 'Maker’s sheet (PDF)' }).click();
    await page.getByText('Sign in first').waitFor();
    expect(await axe(page)).toEqual([]);
    await page.locator('.keeping').getByRole('link', { name: 'Sign in' }).click();
    await page.getByLabel('Your token').fill(added.token.text);
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('link', { name: 'Make a folder' }).click();
    await page.getByText('Signed in as Keeper.').waitFor();
    await settled(page);
    await expect.poll(() => page.locator('.headline').textContent(), patiently).toContain('Closed');
    await page.getByText('Maker’s sheet, several folders').click();
    const guide = await downloaded(page, () =>
      page.getByRole('button', { name: 'Maker’s sheet (PDF)' }).click(),
    );
    expect(guide.toString('latin1', 0, 5)).toBe('%PDF-');
  });
});
