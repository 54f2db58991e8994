import { once } from 'node:events';
import { connect } from 'node:net';
import { expect, test } from 'vitest';
import { firstSpec } from '../../src/cli/first-spec.ts';
import { bearer, buildGroup } from './group.ts';

/** A word that stands for what somebody would not like to see in a log; each stands in one place of one request. */
const markers: string[] = [];
function secret(): string {
  const word = `seahorse${markers.length}x`;
  markers.push(word);
  return word;
}

/** As pino numbers it. */
const errorLevel = 50;

test('the log is lines of JSON, and has no token, cookie, secret, query, spec or design text', async () => {
  const lines: string[] = [];
  const { app, keeper, member, ask } = await buildGroup(
    { LOG_LEVEL: 'trace' },
    { logStream: { write: (line) => void lines.push(line) } },
  );
  const bo = await member('Bo');

  // bodies: taken, refused by the schema, not foldable, not JSON, of another kind, too large
  const style = { style: 'twin-sleeve' };
  const sent = [
    { ...firstSpec, stock: { ...style, name: secret(), size: 'iso-a3' } },
    { ...firstSpec, [secret()]: secret() },
    { ...firstSpec, stock: { name: secret(), width: '20 mm', height: '20 mm', grammage: 200 } },
  ];
  for (const body of sent) await bo.ask('POST', '/v1/folders/plan', body, { 'x-note': secret() });
  const json = { ...bearer(bo.token.text), 'content-type': 'application/json' };
  const post = (payload: string, headers: Record<string, string> = json) =>
    app.inject({ method: 'POST', url: '/v1/folders/svg', payload, headers });
  await post(`{"${secret()}": ${secret()}`);
  await post(secret(), { ...json, 'content-type': `text/${secret()}` });
  await post(`"${secret()}${'x'.repeat(300_000)}"`);

  // what is kept, shared and read with its link
  const title = secret();
  const kept = await bo.ask('PUT', '/v1/designs/thanks', { title, notes: secret(), spec: firstSpec });
  expect(kept.statusCode, kept.body).toBe(201);
  const share = await bo.ask('POST', '/v1/designs/thanks/shares', {});
  const { href } = share.json();
  const linkSecret = String(href).split('/').at(-1) ?? '';
  expect(linkSecret.length).toBeGreaterThan(40);
  markers.push(linkSecret);
  for (const url of [href, `${href}/svg`, `${href}/nothing`, String(href).replace('shared', '%73hared')])
    await ask('GET', url);
  await ask('GET', `/v1/shared/${secret()}`);

  // queries, headers, cookies, tokens in every place
  await bo.ask('GET', `/v1/stock?after=${secret()}`);
  await bo.ask('GET', `/v1/stock?${secret()}=${secret()}`);
  await ask('GET', '/v1/me', undefined, { authorization: `Bearer ${secret()}` });
  await ask('GET', '/v1/me', undefined, { authorization: `Basic ${secret()}` });
  await ask('GET', '/v1/me', undefined, { cookie: `hemfold-session=${secret()}; ${secret()}=1` });
  await ask('GET', `/v1/me?token=${bo.token.text}`);
  await ask('GET', `/v1/${bo.token.text}`);
  const wrong = `${bo.token.text.slice(0, -9)}${secret()}`;
  await ask('GET', '/v1/me', undefined, bearer(wrong));
  const form = { 'content-type': 'application/x-www-form-urlencoded', 'sec-fetch-site': 'same-origin' };
  for (const token of [secret(), wrong, bo.token.text]) {
    const payload = new URLSearchParams({ token }).toString();
    const reply = await app.inject({ method: 'POST', url: '/sign-in', headers: form, payload });
    for (const cookie of [reply.headers['set-cookie']].flat())
      if (cookie) markers.push(/=([^;]{20,})/.exec(String(cookie))?.[1] ?? 'no session');
  }
  const madeToken = await keeper.ask('POST', '/v1/members/Bo/tokens', { scopes: ['read'], note: secret() });
  expect(madeToken.statusCode, madeToken.body).toBe(201);
  markers.push(/hemfold_\w+_([\w-]+)/.exec(madeToken.body)?.[1] ?? 'no token');
  await keeper.ask('POST', '/v1/restore', { [secret()]: 1 });
  for (const { token } of [keeper, bo]) markers.push(token.text.split('_').slice(2).join('_'));

  // what is no HTTP
  const url = new URL(await app.listen({ host: '127.0.0.1', port: 0 }));
  const socket = connect(Number(url.port), url.hostname);
  socket.end(`GET /${secret()} HTTP/9\r\n${secret()}\r\n\r\n`);
  socket.resume();
  await once(socket, 'close');

  const text = lines.join('');
  expect(new Set(markers).size).toBe(markers.length);
  expect(markers.length).toBeGreaterThan(25);
  expect(markers.filter((marker) => text.includes(marker))).toEqual([]);

  const entries = lines.map((line) => JSON.parse(line) as Record<string, unknown>);
  for (const entry of entries)
    expect(entry).toMatchObject({
      level: expect.any(Number),
      time: expect.any(Number),
      msg: expect.any(String),
    });
  const requests = entries.flatMap(({ req }) => (req ? [req as Record<string, unknown>] : []));
  expect(requests.length).toBeGreaterThan(20);
  for (const request of requests) expect(Object.keys(request).toSorted()).toEqual(['ip', 'method', 'url']);
  expect(requests).toContainEqual(expect.objectContaining({ method: 'PUT', url: '/v1/designs/thanks' }));
  expect(entries.some(({ level: each }) => each === errorLevel)).toBe(false);
});
