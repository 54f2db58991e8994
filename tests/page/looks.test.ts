import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { axe, settled } from './browser.ts';
import { isLeftOut, whyLeftOut } from './serve-page.ts';
import { folds } from './specs.ts';
import { patiently, withPage } from './with-page.ts';

describe.skipIf(isLeftOut)(`the folder on the maker’s page${whyLeftOut}`, { timeout: 180_000 }, () => {
  const { open } = withPage();

  test('is there at a glance: the open sheet beside the finished folder', async () => {
    const { page } = await open(folds);
    await settled(page);
    const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
    for (const name of ['open', 'half-open', 'closed']) {
      const box = await page.locator(`.print-${name} > .sight svg`).boundingBox();
      expect(box && box.x + box.width <= width && box.y + box.height <= height, name).toBe(true);
    }
    await page.close();
  });

  test('has every number along the open sheet in full', async () => {
    const box = { style: 'tuck-box', units: 'in', contents: { item: { size: 'iso-a6' }, perPocket: 24 } };
    const { page } = await open({ ...box, stock: { size: 'us-ledger' }, grid: '1 mm' });
    await settled(page);
    const numbers = await page.evaluate(() => {
      const svg = document.querySelector('.print-open > .sight svg');
      const room = svg?.getBoundingClientRect();
      return [...(svg?.querySelectorAll('.ticks text') ?? [])].map((each) => {
        const { left, right, top } = each.getBoundingClientRect();
        const isWhole = room && left >= room.left && right <= room.right && top >= room.top;
        return [isWhole, each.textContent] as const;
      });
    });
    expect(numbers.map(([, text]) => text).join('; ')).toMatch(/≈ \d+ \d\d?\/(?:32|64)/u);
    expect(numbers.filter(([isWhole]) => !isWhole)).toEqual([]);
    await page.close();
  });

  test('folds in space, on demand, and turns by drag and key', async () => {
    const { page, complaints } = await open(folds);
    await settled(page);
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.getByRole('button', { name: 'Show it in space' }).click();
    const canvas = page.locator('.solid canvas');
    await canvas.waitFor();
    await page.getByText('Getting the folder ready to turn').waitFor({ state: 'detached' });
    expect(asked.filter((url) => url.includes('stage-'))).toHaveLength(1);
    const seen = async () => (await canvas.screenshot()).toString('base64');
    const flat = await seen();
    await page.locator('.slider input').fill('14.5');
    await expect.poll(seen, patiently).not.toBe(flat);
    expect(await page.locator('.step-words').textContent()).toContain('Step 15 of 16');
    const folded = await seen();
    await canvas.focus();
    await page.keyboard.press('ArrowLeft');
    await expect.poll(seen, patiently).not.toBe(folded);
    const turned = await seen();
    const box = await canvas.boundingBox();
    if (!box) throw new Error('the canvas is not there');
    await page.mouse.move(box.x + 60, box.y + 60);
    await page.mouse.down();
    await page.mouse.move(box.x + 120, box.y + 90, { steps: 3 });
    await page.mouse.up();
    await expect.poll(seen, patiently).not.toBe(turned);
    expect(await axe(page)).toEqual([]);
    await page.getByRole('button', { name: 'Show it flat' }).click();
    await page.locator('.solid').waitFor({ state: 'detached' });
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('wears a photo as its paper, and sends it nowhere', async () => {
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
    await settled(page);
    expect(page.url()).not.toContain('blob');
    await page
      .getByLabel('Photo of the outside face')
      .setInputFiles({ ...file, buffer: Buffer.from('no picture') });
    await page.getByText('This file is no picture').waitFor();
    // nor with a file that the service makes of the design
    await page.getByText('Maker’s sheet, several folders').click();
    const [request] = await Promise.all([
      page.waitForRequest(/guide/u),
      page.getByRole('button', { name: 'Maker’s sheet (PDF)' }).click(),
    ]);
    expect(JSON.parse(request.postData() ?? '')).toEqual(folds);
    expect(new URL(request.url()).searchParams.get('shows')).toBe('inside');
    expect(sent.filter((each) => !/blob:|assets|guide/u.test(each))).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });
});
