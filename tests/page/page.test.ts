import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  addressOf,
  axe,
  isLeftOut,
  openBrowser,
  openContext,
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
  let shared: BrowserContext;
  /** Stays open for the tests that leave nothing on it which another one would see. */
  let table: Page;
  let served: Awaited<ReturnType<typeof servePage>>;

  beforeAll(async () => {
    [browser, served] = await Promise.all([openBrowser(), servePage()]);
    shared = await openContext(browser);
    table = (await open()).page;
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  const open = (spec?: unknown, context = shared) =>
    openPage(context, spec === undefined ? served.url : addressOf(served.url, spec));

  const layOnTable = async (spec: unknown): Promise<Page> => {
    await table.goto(addressOf(served.url, spec));
    await expect.poll(() => specIn(table)).toEqual(spec);
    await settled(table);
    return table;
  };

  const openApart = async (options: BrowserContextOptions, spec?: unknown) => {
    const context = await openContext(browser, options);
    return { ...(await open(spec, context)), context };
  };

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
    const { page, complaints } = await open();
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
    await page.getByText('Maker’s sheet (PDF), several folders (ZIP)').click();
    await page.getByLabel('in large print').check();
    const guide = await downloaded(page, () => page.getByRole('button', { name: /PDF/u }).click());
    expect(guide.toString('latin1', 0, 5)).toBe('%PDF-');
    await page.getByLabel('How many folders').fill('three');
    await page.getByRole('button', { name: /ZIP/u }).click();
    await page.getByText('Give a whole number').waitFor();
    await page.getByLabel('How many folders').fill('3');
    const sheets = await downloaded(page, () => page.getByRole('button', { name: /ZIP/u }).click());
    expect(sheets.toString('latin1', 0, 4)).toBe('PK\u0003\u0004');
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('does so by the keyboard alone', async () => {
    const { page } = await open();
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
    await settled(page); // sizes to choose from are there
    await press('Tab', 'Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('outcome');
    await page.evaluate(() => document.querySelector<HTMLElement>('.skip')?.focus());
    await tabTo(/^Card$/u);
    await page.keyboard.type('ISO A6');
    await settled(page);
    await tabTo(/^Envelope$/u);
    await page.keyboard.type('ISO C6');
    await settled(page);
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
    await page.close();
  });

  test('says why something cannot be folded, and takes what helps', async () => {
    const page = await layOnTable(refused);
    expect(await page.locator('.headline').textContent()).toContain('cannot be folded');
    expect(await page.locator('.refusal').textContent()).toContain('is missing');
    await page.getByRole('button', { name: /^Take this: use a sheet of US ledger$/iu }).click();
    await settled(page);
    expect(await specIn(page)).toMatchObject({ stock: { size: 'us-ledger' } });
    expect(await page.locator('.headline').textContent()).toContain('Closed');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await settled(page);
    expect(await specIn(page)).toEqual(refused);
  });

  test('says what is wrong at the field itself, once its writer pauses', async () => {
    const page = await layOnTable(unreadable);
    const width = page.getByLabel('Width of the card');
    expect(await width.getAttribute('aria-invalid')).toBe('true');
    const described = (await width.getAttribute('aria-describedby')) ?? '';
    expect(await page.locator(`#${described.split(' ').at(-1)}`).textContent()).toContain('is not a length');
    await width.fill('10 cm');
    await settled(page);
    expect(await width.getAttribute('aria-invalid')).toBeNull();
  });

  test('is a bookmark: its address brings the design back, and one that nobody can read an empty table', async () => {
    const page = await layOnTable(folds);
    const headline = await page.locator('.headline').textContent();
    const { page: other } = await openPage(shared, page.url());
    await settled(other);
    expect(await other.locator('.headline').textContent()).toBe(headline);
    expect(await specIn(other)).toEqual(folds);
    await other.goto(`${served.url}/#d=%%%`);
    await other.reload();
    await other.locator('.outcome-empty').waitFor();
    await other.close();
  });

  test('folds on when the network is gone', async () => {
    const page = await layOnTable(folds);
    await page.getByText('several folders (ZIP)').click();
    const pdf = page.getByRole('button', { name: /PDF/u });
    await pdf.waitFor();
    await shared.setOffline(true);
    try {
      await page.getByLabel('Sets in each pocket').fill('3');
      await settled(page);
      expect(await page.locator('.headline').textContent()).toContain('Holds 3 in each pocket');
      const svg = await downloaded(page, () => page.getByRole('button', { name: /SVG/u }).click());
      expect(svg.equals(await drawnByService(await specIn(page)))).toBe(true);
      await pdf.click();
      await page.getByText('only it can make these files').waitFor();
      await page.locator('.keeping').getByLabel('Name to keep it by').fill('lamp room');
      await page.getByRole('button', { name: 'Keep this design' }).click();
      await page.getByText('The service cannot be reached. Everything').waitFor();
    } finally {
      await shared.setOffline(false);
    }
  });

  test('keeps, opens, shares and removes designs, and keeps papers', async () => {
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
    const { page: guest } = await openPage(shared, link);
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
    await Promise.all([page.close(), guest.close()]);
  });

  test('cuts out of the finished folder, by numbers, by keys and by dragging', async () => {
    const { page, complaints } = await open(folds);
    await settled(page);
    await page.getByRole('button', { name: 'Cut something out' }).click();
    await page.locator('.add-knockout select').selectOption('heart');
    await page.locator('.add-knockout button').click();
    const form = page.getByRole('group', { name: '1. heart' });
    await form.getByLabel('Width').fill('3 cm');
    await form.getByLabel('Moved down by').fill('-12');
    const grip = page.getByRole('button', { name: /^Move the heart/u }).first();
    await grip.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    await settled(page);
    const offset = async () => {
      const { knockouts } = (await specIn(page)) as { knockouts: { on: { offset: object } }[] };
      return knockouts[0]?.on.offset;
    };
    expect(await offset()).toEqual({ up: '12 mm', right: '11 mm' });

    await grip.scrollIntoViewIfNeeded();
    const from = await grip.boundingBox();
    if (!from) throw new Error('there is nothing to take hold of');
    const [x, y] = [from.x + from.width / 2, from.y + from.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 30, y + 20, { steps: 4 });
    await page.mouse.up();
    await settled(page);
    const to = await grip.boundingBox();
    expect((to?.x ?? 0) - from.x).toBeGreaterThan(-32);
    expect((to?.x ?? 0) - from.x).toBeLessThan(-28);
    expect((to?.y ?? 0) - from.y).toBeGreaterThan(18);
    expect((to?.y ?? 0) - from.y).toBeLessThan(22);

    await page.locator('.add-knockout select').selectOption('lettering');
    await page.locator('.add-knockout button').click();
    const letters = page.getByRole('group', { name: '2. lettering' });
    await letters.getByLabel('Text').fill('Hi');
    await letters.getByLabel('Placed at').selectOption('bottom');
    await letters.getByLabel('Moved down by').fill('-20');
    await settled(page);
    const svg = await downloaded(page, () => page.getByRole('button', { name: /SVG/u }).click());
    expect(svg.toString()).toContain('id="knockout"');
    expect(svg.equals(await drawnByService(await specIn(page)))).toBe(true);
    expect(await axe(page)).toEqual([]);

    await letters.getByRole('button', { name: 'Leave it out: 2. lettering' }).click();
    await form.getByLabel('Width').fill('1000 mm');
    await settled(page);
    expect(await page.locator('.headline').textContent()).not.toContain('Closed');
    await form.getByRole('button', { name: 'Leave it out: 1. heart' }).click();
    await settled(page);
    expect(await specIn(page)).toEqual(folds);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('folds in space, on demand, and turns by drag and key', async () => {
    const { page, complaints } = await open(folds);
    await settled(page);
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.getByRole('button', { name: 'Show it in space' }).click();
    await page.getByText('Getting the folder ready to turn').waitFor({ state: 'detached' });
    expect(asked.filter((url) => url.includes('stage-'))).toHaveLength(1);
    const canvas = page.locator('.solid canvas');
    const seen = async () => (await canvas.screenshot()).toString('base64');
    const flat = await seen();
    await page.locator('.slider input').fill('14.5');
    await expect.poll(seen).not.toBe(flat);
    expect(await page.locator('.step-words').textContent()).toContain('Step 15 of 16');
    const folded = await seen();
    await canvas.focus();
    await page.keyboard.press('ArrowLeft');
    await expect.poll(seen).not.toBe(folded);
    const turned = await seen();
    const box = await canvas.boundingBox();
    if (!box) throw new Error('the canvas is not there');
    await page.mouse.move(box.x + 60, box.y + 60);
    await page.mouse.down();
    await page.mouse.move(box.x + 120, box.y + 90, { steps: 3 });
    await page.mouse.up();
    await expect.poll(seen).not.toBe(turned);
    expect(await axe(page)).toEqual([]);
    await page.getByRole('button', { name: 'Show it flat' }).click();
    expect(await page.locator('.solid').count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('shows a photo as the paper, and sends it nowhere', async () => {
    const { page, complaints } = await open(folds);
    await settled(page);
    await page.getByText('Thickness, print and photos').click();
    const sent: string[] = [];
    page.on('request', (request) => sent.push(`${request.method()} ${request.url()}`));
    const photo = new PNG({ width: 4, height: 4 });
    photo.data.fill(200);
    const file = { name: 'waves.png', mimeType: 'image/png', buffer: PNG.sync.write(photo) };
    await page.getByLabel('Photo of the outside face').setInputFiles(file);
    await page.locator('.print-outside image').first().waitFor();
    expect(await page.locator('.print-open image').count()).toBe(0);
    await page.getByRole('button', { name: 'Swap the faces' }).click();
    await page.locator('.print-open image').first().waitFor();
    await page
      .getByLabel('Photo of the outside face')
      .setInputFiles({ ...file, buffer: Buffer.from('no picture') });
    await page.getByText('This file is no picture').waitFor();
    expect(sent.filter((each) => !each.includes('blob:'))).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  const states = { empty: undefined, warned, refused, unreadable } as const;

  const unfold = (page: Page) =>
    page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });

  test('has nothing that axe finds wrong, in any state and theme', async () => {
    const { page, complaints, context } = await openApart({ colorScheme: 'light' });
    const look = async (name: string) => {
      expect(await axe(page), name).toEqual([]);
      // the other theme differs in its colours alone
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await axe(page, ['color-contrast']), `${name}, dark`).toEqual([]);
      await page.emulateMedia({ colorScheme: 'light' });
    };
    for (const [name, spec] of Object.entries(states)) {
      if (spec !== undefined) {
        await page.goto(addressOf(served.url, spec));
        await expect.poll(() => specIn(page)).toEqual(spec);
      }
      await settled(page);
      await unfold(page);
      await look(name);
    }
    await page.goto(addressOf(served.url, folds));
    await settled(page);
    await page.getByRole('button', { name: 'Larger: Half open' }).click();
    await look('a picture on its own');
    expect(complaints).toEqual([]);
    await page.keyboard.press('Escape');
    await page.evaluate(() => document.querySelector('.slip label')?.remove());
    expect(await axe(page), 'axe finds nothing at all').not.toEqual([]);
    await context.close();
  });

  test('never scrolls sideways on 320 pixels, in any state and language', async () => {
    const { page, context } = await openApart({ viewport: { width: 320, height: 640 } });
    for (const language of ['en', 'de', 'fr', 'es']) {
      await page.getByLabel(/^(?:Language|Sprache|Langue|Idioma)$/u).selectOption(language);
      await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe(language);
      // other languages differ in how long their words are
      for (const [name, spec] of Object.entries(language === 'en' ? states : { warned, refused })) {
        if (spec !== undefined) await page.goto(addressOf(served.url, spec));
        await settled(page);
        await unfold(page);
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
    expect(await page.locator('.table [lang=en]').allTextContents()).toEqual([]);
    await context.close();
  });
});
