/*
 * OWASP API Security Top 10 (2023), API1: whoever knows or guesses the name or the id of another's thing must be
 * answered as if it did not exist.
 */
import { describe, expect, test } from 'vitest';
import { buildGroup, type Reply } from '../src/group.ts';
import { folderSpec as spec } from './things.ts';

const things = {
  conventions: { rootUnit: 'in' },
  cutters: { width: '12 in', height: '24 in' },
  stock: { size: 'craft-12x12', caliper: '0.3 mm' },
  designs: { title: 'Gift', spec },
} as const;

/** What a reply tells, but for the name that was asked for. */
const told = ({ statusCode, headers, body }: Reply, name: string) => ({
  statusCode,
  type: headers['content-type'],
  tag: headers.etag,
  body: body.replaceAll(name, 'NAME'),
});

async function adaAndBo() {
  const group = await buildGroup();
  const [ada, bo] = [await group.member('Ada'), await group.member('Bo')];
  for (const [kind, body] of Object.entries(things)) await ada.ask('PUT', `/v1/${kind}/hers`, body);
  return { ...group, ada, bo };
}

describe.each(Object.entries(things))('/v1/%s of another', (kind, body) => {
  test('are neither listed, read, changed nor removed, and answer like what does not exist', async () => {
    const { ada, bo } = await adaAndBo();
    const before = await ada.ask('GET', `/v1/${kind}/hers`);
    expect(before.statusCode).toBe(200);
    expect((await bo.ask('GET', `/v1/${kind}`)).json().items).toEqual([]);
    const asks = [
      ['GET'],
      ['HEAD'],
      ['DELETE'],
      ['DELETE', undefined, { 'if-match': '"1"' }],
      ['PUT', body, { 'if-match': '"1"' }],
      ['GET', undefined, { 'if-none-match': '"1"' }],
    ] as const;
    for (const [method, payload, headers] of asks) {
      const [hers, none] = await Promise.all([
        bo.ask(method, `/v1/${kind}/hers`, payload, headers),
        bo.ask(method, `/v1/${kind}/none`, payload, headers),
      ]);
      expect(told(hers, 'hers'), method).toEqual(told(none, 'none'));
      expect(hers.statusCode, method).toBeOneOf([404, 412]);
    }
    expect((await bo.ask('PUT', `/v1/${kind}/hers`, body)).statusCode, 'one of his own').toBe(201);
    expect((await bo.ask('DELETE', `/v1/${kind}/hers`)).statusCode).toBe(204);
    const after = await ada.ask('GET', `/v1/${kind}/hers`);
    expect([after.statusCode, after.body, after.headers.etag]).toEqual([
      200,
      before.body,
      before.headers.etag,
    ]);
  });
});

describe('designs of another', () => {
  test('show neither versions nor links, and get no links', async () => {
    const { ada, bo } = await adaAndBo();
    const link = (await ada.ask('POST', '/v1/designs/hers/shares', {})).json();
    for (const [method, url, body] of [
      ['GET', '/v1/designs/NAME/versions'],
      ['GET', '/v1/designs/NAME/versions/1'],
      ['GET', '/v1/designs/NAME/shares'],
      ['POST', '/v1/designs/NAME/shares', {}],
      ['DELETE', `/v1/designs/NAME/shares/${link.id}`],
    ] as const) {
      const hers = await bo.ask(method, url.replace('NAME', 'hers'), body);
      const none = await bo.ask(method, url.replace('NAME', 'none'), body);
      expect(told(hers, 'hers'), url).toEqual(told(none, 'none'));
      expect(hers.statusCode, url).toBe(404);
    }
    expect((await ada.ask('GET', '/v1/designs/hers/shares')).json().items).toHaveLength(1);
  });
});

describe('names in a spec', () => {
  test('stand for one’s own things, and never for what another drew with the same words', async () => {
    const { ada, bo } = await adaAndBo();
    const named = { ...spec, stock: 'hers' };
    const drawn = await ada.ask('POST', '/v1/folders/svg', named);
    expect(drawn.statusCode).toBe(200);
    expect((await ada.ask('POST', '/v1/folders/svg', named)).body, 'remembered').toBe(drawn.body);
    const hers = await bo.ask('POST', '/v1/folders/svg', named);
    const none = await bo.ask('POST', '/v1/folders/svg', { ...spec, stock: 'none' });
    expect(hers.statusCode).toBe(400);
    expect(told(hers, 'hers')).toEqual(told(none, 'none'));
  });
});

describe('members and tokens of another', () => {
  test('answer like what does not exist', async () => {
    const { ada, bo } = await adaAndBo();
    for (const [method, url, body] of [
      ['GET', '/v1/members/NAME'],
      ['GET', '/v1/members/NAME/tokens'],
      ['POST', '/v1/members/NAME/tokens', { scopes: ['read'] }],
      ['DELETE', `/v1/members/NAME/tokens/${ada.token.id}`],
    ] as const) {
      const hers = await bo.ask(method, url.replace('NAME', 'Ada'), body);
      const none = await bo.ask(method, url.replace('NAME', 'Nobody'), body);
      expect(told(hers, 'Ada'), url).toEqual(told(none, 'Nobody'));
      expect(hers.statusCode, url).toBe(404);
    }
    const own = await bo.ask('DELETE', `/v1/members/Bo/tokens/${ada.token.id}`);
    expect(own.statusCode, 'her token under his name').toBe(404);
    expect((await ada.ask('GET', '/v1/me')).statusCode).toBe(200);
  });
});
