import { chromium } from 'playwright-core';
import { describe, expect, onTestFinished, test } from 'vitest';
import { commandLine } from '../../src/members/audit.ts';
import { chromiumPath, isLeftOut, servePage, whyLeftOut } from '../page/serve-page.ts';

/** A name that is not this machine's own: there browsers tell less of where a form came from. */
const host = 'folders.example';

async function openAt(url: string) {
  const { port } = new URL(url);
  const browser = await chromium.launch({
    executablePath: chromiumPath ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-background-networking', `--host-resolver-rules=MAP ${host} 127.0.0.1`],
  });
  onTestFinished(() => browser.close());
  return { page: await browser.newPage(), home: `http://${host}:${port}` };
}

describe.skipIf(isLeftOut)(`a group on a workshop’s network, without TLS${whyLeftOut}`, () => {
  test('signs in and out in a browser', { timeout: 60_000 }, async () => {
    const group = await servePage({ GROUP: 'true' });
    onTestFinished(group.close);
    const added = await group.app.members.add(commandLine, 'Keeper', { scopes: ['read', 'write'] });
    if (typeof added === 'string') throw new Error(added);
    const { page, home } = await openAt(group.url);
    await page.goto(`${home}/sign-in`);
    await page.getByLabel('Your token').fill(added.token.text);
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('button', { name: 'Sign out' }).waitFor();
    const me = await page.evaluate(async () => (await fetch('/v1/me')).json());
    expect(me).toMatchObject({ name: 'Keeper', signedInBy: 'cookie' });
    await page.getByRole('button', { name: 'Sign out' }).click();
    await page.getByLabel('Your token').waitFor();
    expect(await page.evaluate(async () => (await fetch('/v1/me')).status)).toBe(401);
  });
});
