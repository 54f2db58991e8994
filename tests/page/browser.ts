import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import axeCore from 'axe-core';
import type { FastifyInstance } from 'fastify';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { buildApp } from '../../src/app.ts';
import { readConfig } from '../../src/config.ts';
import { ensurePage } from './built.ts';

/** Where a Chromium is: named in CHROMIUM_PATH, Debian's, or one that was installed by playwright. */
function findChromium(): string | undefined {
  const own = process.env.CHROMIUM_PATH;
  const places = [...(own ? [own] : []), '/usr/bin/chromium', chromium.executablePath()];
  return places.find((place) => existsSync(place));
}

export const chromiumPath = findChromium();

/** Set by the CI, which installs Chromium: there these tests must not be left out. */
export const isLeftOut = chromiumPath === undefined && process.env.HEMFOLD_REQUIRE_TOOLS !== '1';

/** Said beside the name of tests that were left out. */
export const whyLeftOut = isLeftOut ? ' (LEFT OUT: no Chromium here, see DEVELOPERS.md)' : '';

/** Nothing of the browser's own goes out to the network. */
const quiet = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--enable-unsafe-swiftshader',
];

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: chromiumPath ?? '/usr/bin/chromium', args: quiet });

/** A service with the built page and an empty store, on a free port of this machine alone. */
export async function servePage(settings: Readonly<Record<string, string>> = {}) {
  await ensurePage();
  const folder = await mkdtemp(join(tmpdir(), 'hemfold-page-'));
  const config = readConfig({ LOG_LEVEL: 'silent', DATA_DIR: folder, ...settings });
  const app: FastifyInstance = await buildApp(config, { refuseUnderPressure: false });
  const url = await app.listen({ host: '127.0.0.1', port: 0 });
  const close = async () => {
    await app.close();
    await rm(folder, { recursive: true, force: true });
  };
  return { app, url, close };
}

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
  page.setDefaultTimeout(15_000);
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
  await page.locator('.table[data-at=rest]').waitFor({ timeout: 10_000 });
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
