import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  addressOf,
  axe,
  isLeftOut,
  openBrowser,
  openPage,
  overhang,
  servePage,
  settled,
  specIn,
  whyLeftOut,
} from './browser.ts';

const contents = { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 };
const folds = { style: 'twin-sleeve', units: 'mm', contents, stock: { size: 'iso-a3', caliper: '0.25 mm' } };
const refused = { style: 'twin-sleeve', units: 'in', contents, stock: { size: 'craft-12x12' } };
const unreadable = { ...folds, contents: { item: { width: 'wide', height: '1 in' } } };
const warned = {
  ...folds,
  stock: { size: 'iso-a3', caliper: '0.6 mm', oneWay: true, printPair: 'same-way' },
};

describe.skipIf(isLeftOut)(`the maker’s page in Chromium${whyLeftOut}`, () => {
  let browser: Browser;
  let served: Awaited<ReturnType<typeof servePage>>;

  beforeAll(async () => {
    [browser, served] = await Promise.all([openBrowser(), servePage()]);
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  const open = (spec?: unknown, options?: Parameters<typeof openPage>[2]) =>
    openPage(browser, spec === undefined ? served.url : addressOf(served.url, spec), options);

  const drawnByService = async (spec: unknown): Promise<Buffer> => {
    const reply = await fetch(`${served.url}/v1/folders/svg`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(spec),
    });
    expect(reply.status).toBe(200);
    return Buffer.from(await reply.arrayBuffer());
  };

  const downloaded = async (page: Page, press: () => Promise<void>): Promise<Buffer> => {
    const [download] = await Promise.all([page.waitForEvent('download'), press()]);
    return readFile(await download.path());
  };

  test('takes somebody from an empty table to the very drawing that the service makes', async () => {
    const { page, context, complaints } = await open();
    await page.getByLabel('Card', { exact: true }).selectOption('iso-a6');
    await page.getByLabel('Envelope', { exact: true }).selectOption('iso-c6');
    await page.getByLabel('Sets in each pocket').fill('2');
    await page.getByLabel('Sheet', { exact: true }).selectOption('own');
    await page.getByLabel('Width of the sheet').fill('305');
    await page.getByLabel('Height of the sheet').fill('42,5 cm');
    await page.getByText('Thickness, print and photos').click();
    await page.getByLabel('Thickness of one sheet').fill('0.25');
    await page.getByLabel('cut away').check();
    await page.getByLabel('Lines are drawn').selectOption('starting:perforated scores');
    await settled(page);
    expect(await page.locator('.headline').textContent()).toMatch(
      /^Closed \d+ mm × \d+ mm, about [\d.]+ mm thick/u,
    );
    const svg = await downloaded(page, () => page.getByRole('button', { name: /SVG/u }).click());
    const spec = await specIn(page);
    expect(spec).toMatchObject({
      contents: { ...contents },
      stock: { width: '305 mm', height: '42.5 cm', caliper: '0.25 mm' },
      corners: 'mitred',
    });
    expect(svg.equals(await drawnByService(spec))).toBe(true);
    const fold = await downloaded(page, () => page.getByRole('button', { name: /FOLD/u }).click());
    const reply = await fetch(`${served.url}/v1/folders/fold`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(spec),
    });
    expect(JSON.parse(fold.toString())).toEqual(await reply.json());
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('does so by the keyboard alone', async () => {
    const { page, context } = await open();
    const press = async (...keys: readonly string[]) => {
      for (const key of keys) await page.keyboard.press(key);
    };
    /** Goes on with Tab until what has the focus is called so. */
    const tabTo = async (name: RegExp) => {
      for (let count = 0; count < 80; count++) {
        await press('Tab');
        const focused = await page.evaluate(() => {
          const { activeElement: here } = document;
          const label =
            here instanceof HTMLSelectElement || here instanceof HTMLInputElement ? here.labels?.[0] : here;
          return {
            text: label?.textContent ?? '',
            outline: here ? getComputedStyle(here).outlineStyle : 'none',
          };
        });
        if (!name.test(focused.text)) continue;
        expect(focused.outline, `nobody sees that ${focused.text} has the focus`).not.toBe('none');
        return;
      }
      throw new Error(`Tab never comes to ${name}`);
    };
    await press('Tab', 'Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('outcome');
    await page.evaluate(() => document.querySelector<HTMLElement>('.skip')?.focus());
    await tabTo(/^Card$/u);
    await page.keyboard.type('ISO A6');
    await tabTo(/^Envelope$/u);
    await page.keyboard.type('ISO C6');
    await tabTo(/^Sheet$/u);
    await page.keyboard.type('ISO A3');
    await settled(page);
    await tabTo(/^The next step$/u);
    await press('Enter');
    expect(await page.locator('.step-words').textContent()).toContain('Step 2');
    await tabTo(/SVG/u);
    const svg = await downloaded(page, () => press('Enter'));
    const spec = await specIn(page);
    expect(svg.equals(await drawnByService(spec))).toBe(true);
    await page.evaluate(() => document.querySelector<HTMLElement>('.skip')?.focus());
    await press('Control+z');
    await expect.poll(() => specIn(page), { timeout: 5_000 }).not.toHaveProperty('stock');
    await press('Control+Shift+z');
    await expect.poll(() => specIn(page), { timeout: 5_000 }).toEqual(spec);
    await context.close();
  });

  test('says why something cannot be folded, and takes what helps', async () => {
    const { page, context } = await open(refused);
    await settled(page);
    expect(await page.locator('.headline').textContent()).toContain('cannot be folded');
    expect(await page.locator('.refusal').textContent()).toContain('is missing');
    await page.getByRole('button', { name: /^Take this: use a sheet of US ledger$/u }).click();
    await settled(page);
    expect(await specIn(page)).toMatchObject({ stock: { size: 'us-ledger' } });
    expect(await page.locator('.headline').textContent()).toContain('Closed');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await settled(page);
    expect(await specIn(page)).toEqual(refused);
    await context.close();
  });

  test('says what is wrong at the field itself, once its writer pauses', async () => {
    const { page, context } = await open(unreadable);
    await settled(page);
    const width = page.getByLabel('Width of the card');
    expect(await width.getAttribute('aria-invalid')).toBe('true');
    const described = (await width.getAttribute('aria-describedby')) ?? '';
    expect(await page.locator(`#${described.split(' ').at(-1)}`).textContent()).toContain('is not a length');
    await width.fill('10 cm');
    await settled(page);
    expect(await width.getAttribute('aria-invalid')).toBeNull();
    await context.close();
  });

  test('is a bookmark: its address brings the design back, and one that nobody can read an empty table', async () => {
    const { page, context } = await open(folds);
    await settled(page);
    const headline = await page.locator('.headline').textContent();
    const { page: other, context: elsewhere } = await openPage(browser, page.url());
    await settled(other);
    expect(await other.locator('.headline').textContent()).toBe(headline);
    expect(await specIn(other)).toEqual(folds);
    await other.goto(`${served.url}/#d=%%%`);
    await other.reload();
    await other.locator('.outcome-empty').waitFor();
    await Promise.all([context.close(), elsewhere.close()]);
  });

  test('folds on when the network is gone', async () => {
    const { page, context } = await open(folds);
    await settled(page);
    await context.setOffline(true);
    await page.getByLabel('Sets in each pocket').fill('3');
    await settled(page);
    expect(await page.locator('.headline').textContent()).toContain('Holds 3 in each pocket');
    const svg = await downloaded(page, () => page.getByRole('button', { name: /SVG/u }).click());
    expect(svg.equals(await drawnByService(await specIn(page)))).toBe(true);
    await page.locator('.keeping').getByLabel('Name to keep it by').fill('lamp room');
    await page.getByRole('button', { name: 'Keep this design' }).click();
    await page.getByText('The service cannot be reached').waitFor();
    await context.close();
  });

  test('keeps, opens, shares and removes designs, and keeps papers', async () => {
    const { page, context, complaints } = await open(warned);
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
    const { page: guest, context: elsewhere } = await openPage(browser, link);
    await guest.getByText('A design that was shared with you').waitFor();
    await settled(guest);
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
    await Promise.all([context.close(), elsewhere.close()]);
  });

  const states = { empty: undefined, folded: folds, warned, refused, unreadable } as const;

  test.each(['light', 'dark'] as const)(
    'has nothing that axe finds wrong, in any state, %s',
    async (colorScheme) => {
      const { page, context, complaints } = await open(undefined, { colorScheme });
      // the other theme differs in its colours alone
      const rules = colorScheme === 'light' ? undefined : ['color-contrast'];
      for (const [name, spec] of Object.entries(states)) {
        if (spec !== undefined) {
          await page.goto(addressOf(served.url, spec));
          await expect.poll(() => specIn(page)).toEqual(spec);
        }
        await settled(page);
        await page.evaluate(() => {
          for (const details of document.querySelectorAll('details')) details.open = true;
        });
        expect(await axe(page, rules), name).toEqual([]);
      }
      await page.goto(addressOf(served.url, folds));
      await settled(page);
      await page.getByRole('button', { name: 'Larger: Half open' }).click();
      expect(await axe(page, rules), 'a picture on its own').toEqual([]);
      expect(complaints).toEqual([]);
      await context.close();
    },
  );

  test('axe is able to find something wrong', async () => {
    const { page, context } = await open();
    await page.evaluate(() => document.querySelector('label')?.remove());
    expect(await axe(page)).not.toEqual([]);
    await context.close();
  });

  test('never scrolls sideways on 320 pixels, in any state and language', async () => {
    const { page, context } = await open(undefined, { viewport: { width: 320, height: 640 } });
    for (const language of ['en', 'de', 'fr', 'es']) {
      await page.getByLabel(/^(?:Language|Sprache|Langue|Idioma)$/u).selectOption(language);
      await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe(language);
      for (const [name, spec] of Object.entries(states)) {
        if (spec !== undefined) await page.goto(addressOf(served.url, spec));
        await settled(page);
        await page.evaluate(() => {
          for (const details of document.querySelectorAll('details')) details.open = true;
        });
        expect(await overhang(page), `${name} in ${language}`).toEqual([]);
      }
    }
    await context.close();
  });

  test('speaks the reader’s language, and none of the core’s English is left', async () => {
    const { page, context } = await open(warned, { locale: 'de-AT' });
    await settled(page);
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
    expect(await page.locator('h2').allTextContents()).toContain('Vor dem Schneiden');
    expect(await page.locator('.table [lang=en]').allTextContents()).toEqual([]);
    await context.close();
  });
});
