import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { type Browser, chromium } from 'playwright-core';
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
