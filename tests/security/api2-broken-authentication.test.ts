/*
 * OWASP API Security Top 10 (2023), API2: nobody is taken for somebody else, guessing is slow, and what shows who one
 * is does not leak.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { expectProblem } from '../src/expect-problem.ts';
import { bearer, buildGroup } from '../src/group.ts';
import { setClock } from '../src/members/set-clock.ts';
import { tempFolder } from '../src/temp-folder.ts';
import { folderSpec } from './things.ts';

const secretOf = (text: string) => text.slice(-43);

const form = { 'content-type': 'application/x-www-form-urlencoded', 'sec-fetch-site': 'same-origin' };

describe('who is taken', () => {
  test('is nobody with a token that is not exactly right', async () => {
    const group = await buildGroup();
    const [ada, bo] = [await group.member('Ada'), await group.member('Bo')];
    const { text } = ada.token;
    const other = secretOf(bo.token.text);
    for (const authorization of [
      `Bearer ${text.slice(0, -1)}${text.endsWith('A') ? 'B' : 'A'}`,
      `Bearer ${text.slice(0, -43)}${other}`,
      `Bearer ${text.toUpperCase()}`,
      `Bearer ${text} ${text}`,
      `Basic ${Buffer.from(`Ada:${text}`).toString('base64')}`,
    ]) {
      const reply = await group.ask('GET', '/v1/me', undefined, { authorization });
      expectProblem(reply, 401);
      expect(reply.headers['www-authenticate']).toBe('Bearer realm="hemfold", error="invalid_token"');
    }
    expect((await ada.ask('GET', '/v1/me')).json().name).toBe('Ada');
  });

  test('is nobody without a token, nor with one in the URL or in a body', async () => {
    const group = await buildGroup();
    const { text } = group.keeper.token;
    const reply = await group.ask('GET', '/v1/me');
    expectProblem(reply, 401);
    expect(reply.headers['www-authenticate']).toBe('Bearer realm="hemfold"');
    expectProblem(await group.ask('GET', `/v1/me?access_token=${text}`), 401);
    expectProblem(await group.ask('PUT', '/v1/members/Bo', { access_token: text }), 401);
  });

  test('is nobody with a token that was revoked, has ended, or belongs to a suspended member', async () => {
    const clock = setClock('2026-11-03T18:00:00.000Z');
    const group = await buildGroup({}, { clock });
    const revoked = await group.member('Revoked');
    const ended = await group.member('Ended', { expires: '2026-11-03T19:00:00.000Z' });
    const suspended = await group.member('Suspended');
    for (const { ask } of [revoked, ended, suspended])
      expect((await ask('GET', '/v1/me')).statusCode).toBe(200);
    await group.keeper.ask('DELETE', `/v1/members/Revoked/tokens/${revoked.token.id}`);
    clock.set('2026-11-03T19:00:00.000Z');
    await group.keeper.ask('PUT', '/v1/members/Suspended', { active: false });
    for (const { ask } of [revoked, ended, suspended]) expectProblem(await ask('GET', '/v1/me'), 401);
  });

  test('is nobody with a link of a member who is suspended, until the member may come back', async () => {
    const group = await buildGroup();
    const bo = await group.member('Bo');
    await bo.ask('PUT', '/v1/designs/gift', { title: 'Gift', spec: folderSpec });
    const { href } = (await bo.ask('POST', '/v1/designs/gift/shares', {})).json();
    const paths = [href, `${href}/plan`, `${href}/views`];
    const statuses = async () =>
      Promise.all(paths.map(async (path) => (await group.ask('GET', path)).statusCode));
    expect(await statuses()).toEqual([200, 200, 200]);
    await group.keeper.ask('PUT', '/v1/members/Bo', { active: false });
    expect(await statuses()).toEqual([404, 404, 404]);
    await group.keeper.ask('PUT', '/v1/members/Bo', { active: true });
    expect(await statuses()).toEqual([200, 200, 200]);
  });

  test('is nobody with an invented cookie', async () => {
    const group = await buildGroup();
    for (const value of ['', 'a'.repeat(43), group.keeper.token.text, group.keeper.token.id])
      expectProblem(await group.ask('GET', '/v1/me', undefined, { cookie: `hemfold-session=${value}` }), 401);
  });
});

describe('guessing', () => {
  const guess = (n: number) => `hemfold_${'0'.repeat(20)}_${String(n).padStart(43, 'x')}`;

  test('is answered ten times a minute and address, by header and by form together', async () => {
    const clock = setClock('2026-11-03T18:00:00.000Z');
    const group = await buildGroup({}, { clock });
    const bo = await group.member('Bo');
    expect((await bo.ask('GET', '/v1/me')).statusCode, 'known before').toBe(200);
    for (let n = 0; n < 5; n++)
      expectProblem(await group.ask('GET', '/v1/me', undefined, bearer(guess(n))), 401);
    const signIn = (token: string) =>
      group.app.inject({ method: 'POST', url: '/sign-in', headers: form, payload: `token=${token}` });
    for (let n = 5; n < 10; n++) expect((await signIn(guess(n))).statusCode).toBe(401);
    const eleventh = await group.ask('GET', '/v1/me', undefined, bearer(guess(10)));
    expectProblem(eleventh, 429);
    expect(eleventh.headers['retry-after']).toBe('60');
    const right = await group.ask('GET', '/v1/me', undefined, bearer(group.keeper.token.text));
    expectProblem(right, 429); // also the right one, or the limit would be none
    expect((await signIn(group.keeper.token.text)).statusCode).toBe(429);
    expect((await bo.ask('GET', '/v1/me')).statusCode, 'known before').toBe(200);
    clock.set('2026-11-03T18:01:00.000Z');
    expect((await group.keeper.ask('GET', '/v1/me')).statusCode).toBe(200);
  });

  test('is hopeless: a secret has 256 random bits', async () => {
    const group = await buildGroup();
    const texts = await Promise.all(
      Array.from({ length: 20 }, async (_, n) => (await group.member(`m${n}`)).token.text),
    );
    for (const text of texts) expect(Buffer.from(secretOf(text), 'base64url')).toHaveLength(32);
    expect(new Set(texts.map(secretOf)).size).toBe(20);
  });
});

describe('what shows who one is', () => {
  test('is in no file of the database and in no line of the log', async () => {
    const folder = await tempFolder();
    const lines: string[] = [];
    const group = await buildGroup(
      { DATA_DIR: folder, LOG_LEVEL: 'trace' },
      { logStream: { write: (line) => void lines.push(line) } },
    );
    const { token } = group.keeper;
    const payload = new URLSearchParams({ token: token.text }).toString();
    const reply = await group.app.inject({ method: 'POST', url: '/sign-in', headers: form, payload });
    const cookie = String(reply.headers['set-cookie']);
    const [, session = 'none'] = /session=([\w-]{43})/.exec(cookie) ?? [];
    await group.ask('GET', '/v1/me', undefined, { cookie: `hemfold-session=${session}` });
    await group.ask('GET', `/v1/me?token=${token.text}`);
    await group.ask('GET', `/v1/me/${token.text}`);
    await group.keeper.ask('PUT', '/v1/designs/gift', {
      title: 'Gift',
      spec: folderSpec,
    });
    const { secret } = (await group.keeper.ask('POST', '/v1/designs/gift/shares', {})).json();
    for (const url of [`/v1/shared/${secret}`, `/v1/shared/${secret}/plan?x=1`, `/v2/shared/${secret}`])
      await group.ask('GET', url);
    await group.app.close();
    const files = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'latin1'));
    const log = lines.join('');
    expect(log).toContain('/v1/shared/[hidden]/plan');
    for (const each of [secretOf(token.text), session, secret]) {
      expect(each).toMatch(/^[\w-]{43}$/);
      expect(log).not.toContain(each);
      for (const file of files) expect(file).not.toContain(each);
    }
  });
});
