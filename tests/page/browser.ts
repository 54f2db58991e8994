import axeCore from 'axe-core';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';

/** A browser's window of its own: what one keeps, the other does not know. */
export const openContext = (browser: Browser, options: BrowserContextOptions = {}): Promise<BrowserContext> =>
  browser.newContext({
    locale: 'en-GB',
    viewport: { width: 1280, height: 900 },
    reducedMotion: 'reduce',
    ...options,
  });

/** A page, and what it complains of: errors, what its own content policy forbids, and requests to another host. */
export interface Watched {
  readonly page: Page;
  readonly complaints: readonly string[];
}

export async function openPage(context: BrowserContext, url: string): Promise<Watched> {
  const page = await context.newPage();
  page.setDefaultTimeout(45_000); // milliseconds: a machine may have much else to do
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    // the driver that draws without a graphics card says how slow it is
    const isDriver = message.text().includes('GL Driver Message');
    if (['error', 'warning'].includes(message.type()) && !isDriver) complaints.push(message.text());
  });
  page.on('request', (request) => {
    const { protocol, origin } = new URL(request.url());
    if (protocol.startsWith('http') && origin !== new URL(url).origin)
      complaints.push(`asked ${request.url()}`);
  });
  await page.goto(url);
  await page.locator('.headline').waitFor();
  return { page, complaints };
}

/** The page has taken a change in, and told what takes longer, too. */
export async function settled(page: Page): Promise<void> {
  // what was just done is drawn first: until then the page still looks as if it were at rest
  await page.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))),
  );
  await page.locator('.table[data-at=rest]').waitFor();
}

/** The spec that the page's address holds. */
export async function specIn(page: Page): Promise<unknown> {
  const encoded = new URL(page.url()).hash.replace('#d=', '');
  return (JSON.parse(Buffer.from(encoded, 'base64url').toString('utf8')) as { spec: unknown }).spec;
}

export const addressOf = (url: string, spec: unknown): string =>
  `${url}/#d=${Buffer.from(JSON.stringify({ spec })).toString('base64url')}`;

/** Rules of WCAG 2.2 A and AA, and what axe thinks good besides. */
const everyRule = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds wrong, one line for each place. @param runOnly tags or names of rules */
export async function axe(page: Page, runOnly: readonly string[] = everyRule): Promise<string[]> {
  await page.evaluate(axeCore.source);
  return page.evaluate(async (wanted) => {
    const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
    const { violations } = await axe.run(document, { runOnly: [...wanted], resultTypes: ['violations'] });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  }, runOnly);
}

/** What makes the page wider than its window, if anything does. */
export const overhang = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    document.documentElement.scrollWidth <= innerWidth
      ? []
      : [...document.querySelectorAll('body *')]
          .filter((each) => each.getBoundingClientRect().right > innerWidth)
          .map(
            ({ tagName, className, textContent }) => `${tagName} ${className} ${textContent?.slice(0, 60)}`,
          ),
  );
