import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { addressOf, openContext, openPage, settled, specIn, type Watched } from './browser.ts';
import { openBrowser, servePage } from './serve-page.ts';

/** How long something is waited for, in milliseconds: a machine may have much else to do. */
export const patiently = { timeout: 45_000 } as const;

/** Chromium, a service and a window for the tests of one file. */
export function withPage() {
  let browser: Browser;
  let served: Awaited<ReturnType<typeof servePage>>;
  let shared: BrowserContext;
  /** Stays open for the tests that leave nothing on it which another one would see. */
  let table: Page;

  beforeAll(async () => {
    [browser, served] = await Promise.all([openBrowser(), servePage()]);
    shared = await openContext(browser);
    table = (await open()).page;
  }, 240_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  /** Opens the page with a design in its address, or an empty table, in the window that the tests share. */
  const open = (spec?: unknown, context = shared): Promise<Watched> =>
    openPage(context, spec === undefined ? served.url : addressOf(served.url, spec));

  const post = async (path: string, spec: unknown): Promise<Buffer> => {
    const reply = await fetch(`${served.url}/v1/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(spec),
    });
    expect(reply.status).toBe(200);
    return Buffer.from(await reply.arrayBuffer());
  };

  return {
    open,
    post,
    url: () => served.url,
    shared: () => shared,
    browser: () => browser,
    /** What the service draws. */
    drawnByService: (spec: unknown) => post('folders/svg', spec),
    /** Lays a design on the table that the tests of a file share. */
    layOnTable: async (spec: unknown): Promise<Page> => {
      await lay(table, served.url, spec);
      return table;
    },
    /** Opens the page in a window of its own. */
    openApart: async (options: BrowserContextOptions, spec?: unknown) => {
      const context = await openContext(browser, options);
      return { ...(await open(spec, context)), context };
    },
  };
}

/** Lays a design on the table of an open page. */
export async function lay(page: Page, url: string, spec: unknown): Promise<void> {
  await page.goto(addressOf(url, spec));
  await expect.poll(() => specIn(page), patiently).toEqual(spec);
  await settled(page);
}

/** A file that the page has saved. */
export async function downloaded(page: Page, press: () => Promise<void>): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return readFile(await download.path());
}

/** Opens everything on the page that can be opened. */
export const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
