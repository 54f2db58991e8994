import { describe, expect, test } from 'vitest';
import { expectProblem } from '../../src/expect-problem.ts';
import { asking, buildGroup, type TestGroup } from '../../src/group.ts';
import { setClock } from '../../src/members/set-clock.ts';

const form = { 'content-type': 'application/x-www-form-urlencoded' };
const ownPage = { 'sec-fetch-site': 'same-origin' };

const post = (
  { app }: Pick<TestGroup, 'app'>,
  url: string,
  text: string,
  headers: Record<string, string> = ownPage,
) => app.inject({ method: 'POST', url, headers: { ...form, ...headers }, payload: text });

const signIn = (group: Pick<TestGroup, 'app'>, token: string, headers?: Record<string, string>) =>
  post(group, '/sign-in', new URLSearchParams({ token }).toString(), headers);

/** The one cookie of a reply. */
function cookieOf({ headers }: { readonly headers: Record<string, unknown> }) {
  const [cookie = '', ...rest] = [headers['set-cookie']].flat().map(String);
  expect(rest).toEqual([]);
  const [pair = '', ...attributes] = cookie.split('; ');
  return { pair, attributes, cookie: { cookie: pair } };
}

describe('the sign-in page', () => {
  test('asks for a token, with nothing inside that the policy forbids', async () => {
    const { ask } = await buildGroup();
    const reply = await ask('GET', '/sign-in');
    expect(reply.statusCode).toBe(200);
    expect(reply.headers).toMatchObject({
      'content-type': 'text/html; charset=utf-8',
      'cache-control': 'no-store',
      'content-security-policy': expect.stringContaining("form-action 'self'"),
    });
    expect(reply.body).toMatch(/<label for="token">[\s\S]*<input id="token" name="token" type="password"/);
    expect(reply.body).toMatch(/<html lang="en">[\s\S]*<title>Sign in – hemfold<\/title>/);
    expect(reply.body).not.toMatch(/<script|<style|\sstyle=|\son\w+=/);
    const [, style = ''] = /<link rel="stylesheet" href="([^"]+)">/.exec(reply.body) ?? [];
    const css = await ask('GET', style);
    expect([css.statusCode, css.headers['content-type']]).toEqual([200, 'text/css; charset=utf-8']);
    expect(css.body).toContain('prefers-color-scheme: dark');
  });

  test('signs a browser in and out', async () => {
    const group = await buildGroup();
    const bo = await group.member('Bo');
    const reply = await signIn(group, ` ${bo.token.text}\n`);
    expect([reply.statusCode, reply.headers.location]).toEqual([303, '/sign-in']);
    const { pair, attributes, cookie } = cookieOf(reply);
    expect(pair).toMatch(/^hemfold-session=[\w-]{43}$/);
    expect(attributes.map((each) => each.split('=')[0]).toSorted()).toEqual([
      'Expires',
      'HttpOnly',
      'Path',
      'SameSite',
    ]);
    expect(attributes).toEqual(expect.arrayContaining(['Path=/', 'SameSite=Strict']));

    const browser = asking(group.app, cookie);
    expect((await browser('GET', '/v1/me')).json()).toMatchObject({ name: 'Bo', signedInBy: 'cookie' });
    expect((await browser('GET', '/sign-in')).body).toContain('As <strong>Bo</strong>');

    const out = await post(group, '/sign-out', '', { ...ownPage, ...cookie });
    expect([out.statusCode, out.headers.location]).toEqual([303, '/sign-in']);
    expect(cookieOf(out).attributes).toContain('Expires=Thu, 01 Jan 1970 00:00:00 GMT');
    expectProblem(await browser('GET', '/v1/me'), 401);
    expect((await bo.ask('GET', '/v1/me')).statusCode).toBe(200);
  });

  test('sets a cookie for https alone where a trusted proxy says that it came so', async () => {
    const group = await buildGroup({ TRUST_PROXY: 'loopback' });
    const https = { 'x-forwarded-proto': 'https', 'x-forwarded-host': 'folders.example' };
    const { pair, attributes, cookie } = cookieOf(
      await signIn(group, group.keeper.token.text, { ...https, origin: 'https://folders.example' }),
    );
    expect(pair).toMatch(/^__Host-hemfold-session=/);
    expect(attributes).toEqual(expect.arrayContaining(['Secure', 'Path=/', 'HttpOnly', 'SameSite=Strict']));
    const browser = asking(group.app, cookie);
    expect((await browser('GET', '/v1/me', undefined, https)).statusCode).toBe(200);
    expectProblem(await browser('GET', '/v1/me'), 401);
  });

  test.each([
    ['hemfold_nonsense', /This is no token/],
    [`hemfold_${'0'.repeat(20)}_${'a'.repeat(43)}`, /This token is not taken/],
    ['"><script>alert(1)</script>', /This is no token/],
  ])('says what is wrong with %s, and repeats nothing of it', async (text, reason) => {
    const group = await buildGroup();
    const reply = await signIn(group, text);
    expect(reply.statusCode).toBe(401);
    expect(reply.headers['set-cookie']).toBeUndefined();
    expect(reply.headers['www-authenticate']).toContain('Bearer');
    expect(reply.body).toMatch(reason);
    expect(reply.body).toMatch(/role="alert"[\s\S]*aria-invalid="true"/);
    expect(reply.body).not.toContain(text);
  });

  test('shows a name as text, whatever is in it', async () => {
    const group = await buildGroup();
    // no such name can be given; this one comes straight from the database
    const { app } = group;
    const added = await app.members.add({ name: 'test' }, '<b>"&', { scopes: ['read'] });
    if (typeof added === 'string') throw new Error(added);
    const { cookie } = cookieOf(await signIn(group, added.token.text));
    expect((await asking(app, cookie)('GET', '/sign-in')).body).toContain('&lt;b&gt;&quot;&amp;');
  });

  test('refuses other fields and bodies that are too large', async () => {
    const group = await buildGroup();
    expectProblem(await post(group, '/sign-in', 'token=a&next=https://elsewhere.example'), 400);
    expectProblem(await post(group, '/sign-in', ''), 400);
    expectProblem(await post(group, '/sign-in', `token=${'x'.repeat(5000)}`), 413);
    expectProblem(await group.ask('GET', '/sign-in?next=//elsewhere.example'), 400);
  });
});

describe('a browser that was signed in', () => {
  test('is told to forget its cookie when it is not taken any more', async () => {
    const group = await buildGroup();
    const bo = await group.member('Bo');
    const { cookie } = cookieOf(await signIn(group, bo.token.text));
    await group.keeper.ask('DELETE', `/v1/members/Bo/tokens/${bo.token.id}`);
    const reply = await asking(group.app, cookie)('GET', '/v1/me');
    expect(expectProblem(reply, 401).detail).toBe('This browser is not signed in any more.');
    expect(cookieOf(reply).attributes).toContain('Expires=Thu, 01 Jan 1970 00:00:00 GMT');
  });

  test('is known for thirty days, and never longer than its token', async () => {
    const clock = setClock('2026-11-03T18:00:00.000Z');
    const group = await buildGroup({}, { clock });
    const bo = await group.member('Bo', { expires: '2026-11-10T00:00:00.000Z' });
    const { attributes, cookie } = cookieOf(await signIn(group, bo.token.text));
    expect(attributes).toContain('Expires=Tue, 10 Nov 2026 00:00:00 GMT');
    const browser = asking(group.app, cookie);
    clock.set('2026-11-09T23:59:59.000Z');
    expect((await browser('GET', '/v1/me')).statusCode).toBe(200);
    clock.set('2026-11-10T00:00:00.000Z');
    expectProblem(await browser('GET', '/v1/me'), 401);
  });

  test('is whom its token says, where it also sends a token', async () => {
    const group = await buildGroup();
    const bo = await group.member('Bo');
    const { cookie } = cookieOf(await signIn(group, group.keeper.token.text));
    expect((await bo.ask('GET', '/v1/me', undefined, cookie)).json().name).toBe('Bo');
    const wrong = { ...cookie, authorization: 'Bearer wrong' };
    expectProblem(await group.ask('GET', '/v1/me', undefined, wrong), 401);
  });
});
