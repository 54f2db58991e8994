import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openPage, settled, specIn } from './browser.ts';
import { isLeftOut, whyLeftOut } from './serve-page.ts';
import { folds, refused, unreadable } from './specs.ts';
import { downloaded, patiently, withPage } from './with-page.ts';

describe.skipIf(isLeftOut)(`the maker’s page in Chromium${whyLeftOut}`, { timeout: 180_000 }, () => {
  const { open, layOnTable, post, drawnByService, shared, url } = withPage();

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
      /^Closed \d+\smm × \d+\smm, about [\d.]+\smm thick/u,
    );
    const svg = await downloaded(page, () => page.getByRole('button', { name: /SVG/u }).click());
    const spec = await specIn(page);
    expect(spec).toMatchObject({
      contents: folds.contents,
      stock: { width: '305 mm', height: '42.5 cm', caliper: '0.25 mm' },
      corners: 'mitred',
    });
    expect(svg.equals(await drawnByService(spec))).toBe(true);
    const fold = await downloaded(page, () => page.getByRole('button', { name: /FOLD/u }).click());
    const model = await post('folders/fold', spec);
    expect(JSON.parse(fold.toString())).toEqual(JSON.parse(model.toString()));
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('does so by the keyboard alone', async () => {
    const { page } = await open();
    const press = (key: string) => page.keyboard.press(key);
    await settled(page); // sizes to choose from are there
    await press('Tab');
    await press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('outcome');
    await page.evaluate(() => document.querySelector<HTMLElement>('.skip')?.focus());
    await tabTo(page, /^Card$/u);
    await arrowTo(page, /^ISO A6,/u);
    await page.getByLabel('Envelope', { exact: true }).waitFor();
    await tabTo(page, /^Envelope$/u);
    await arrowTo(page, /^ISO C6,/u);
    await tabTo(page, /^Sheet$/u);
    await arrowTo(page, /^ISO A3,/u);
    await settled(page);
    await page.getByRole('button', { name: 'The next step' }).waitFor();
    await tabTo(page, /^The next step$/u);
    await press('Enter');
    await page.locator('.step-words', { hasText: 'Step 2' }).waitFor();
    await tabTo(page, /SVG/u);
    const svg = await downloaded(page, () => press('Enter'));
    const spec = await specIn(page);
    expect(spec).toMatchObject({ stock: { size: 'iso-a3' } });
    expect(svg.equals(await drawnByService(spec))).toBe(true);
    await page.evaluate(() => document.querySelector<HTMLElement>('.skip')?.focus());
    await press('Control+z');
    await expect.poll(() => specIn(page), patiently).not.toEqual(spec);
    await press('Control+Shift+z');
    await expect.poll(() => specIn(page), patiently).toEqual(spec);
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

  test('says what is wrong at the field itself and at the top, once its writer pauses', async () => {
    const page = await layOnTable(unreadable);
    const width = page.getByLabel('Width of the card');
    expect(await width.getAttribute('aria-invalid')).toBe('true');
    const described = (await width.getAttribute('aria-describedby')) ?? '';
    expect(await page.locator(`#${described.split(' ').at(-1)}`).textContent()).toContain('is not a length');
    await page
      .locator('.wrongs')
      .getByRole('button', { name: /^Change it/u })
      .click();
    expect(await width.evaluate((field) => field === document.activeElement)).toBe(true);
    await width.fill('10 cm');
    await settled(page);
    expect(await width.getAttribute('aria-invalid')).toBeNull();
  });

  test('leaves out what it has no field for, where that is wrong', async () => {
    const page = await layOnTable({ ...folds, seam: 'sewn', hinge: '3 mm' });
    await page.getByRole('button', { name: 'Leave it out: /hinge' }).click();
    await page.getByLabel('flat, one over the other').check();
    await settled(page);
    expect(await specIn(page)).toEqual({ ...folds, seam: 'flat' });
  });

  test('makes every way of folding from the card that was chosen', async () => {
    const page = await layOnTable({
      style: 'twin-sleeve',
      units: 'mm',
      contents: { item: { size: 'iso-a6' } },
    });
    const styles = page.getByLabel('Kind of folder');
    for (const style of await styles
      .locator('option')
      .evaluateAll((all) => all.map((each) => (each as HTMLOptionElement).value))) {
      await styles.selectOption(style);
      await settled(page);
      expect(await page.locator('.headline').textContent(), style).toContain('Closed');
      if (style !== 'tag') continue;
      // it holds nothing: the card is to be chosen again
      await styles.selectOption('card-base');
      await page.getByLabel('Card', { exact: true }).selectOption('iso-a6');
    }
  });

  test('is a bookmark: its address brings the design back, and one that nobody can read an empty table', async () => {
    const page = await layOnTable(folds);
    const headline = await page.locator('.headline').textContent();
    const { page: other } = await openPage(shared(), page.url());
    await settled(other);
    expect(await other.locator('.headline').textContent()).toBe(headline);
    expect(await specIn(other)).toEqual(folds);
    await other.goto(`${url()}/#d=%%%`);
    await other.reload();
    await other.locator('.outcome-empty').waitFor();
    await other.close();
  });
});

/** Goes on with Tab until what has the focus is called so. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let count = 0; count < 120; count++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => {
      const { activeElement: here } = document;
      const label =
        here instanceof HTMLSelectElement || here instanceof HTMLInputElement ? here.labels?.[0] : here;
      return { text: label?.textContent ?? '', outline: here ? getComputedStyle(here).outlineStyle : 'none' };
    });
    if (!name.test(focused.text)) continue;
    expect(focused.outline, `nobody sees that ${focused.text} has the focus`).not.toBe('none');
    return;
  }
  throw new Error(`Tab never comes to ${name}`);
}

/** Goes on with the arrow key until the list that has the focus shows so. */
async function arrowTo(page: Page, option: RegExp): Promise<void> {
  const shown = () =>
    page.evaluate(() => {
      const { activeElement: here } = document;
      return here instanceof HTMLSelectElement ? (here.selectedOptions[0]?.text ?? '') : 'no list';
    });
  for (let count = 0; count < 120; count++) {
    if (option.test(await shown())) return;
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`the arrow key never comes to ${option}, but to ${await shown()}`);
}
