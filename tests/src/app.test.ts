import request from 'supertest';
import { describe, expect, test } from 'vitest';
import { build } from './build.ts';
import { buildProbed, goodProbe } from './probe-app.ts';

describe('what every reply carries', () => {
  test.each(['/health', '/docs', '/nothing'])(
    '%s keeps browsers from running or framing foreign things',
    async (url) => {
      const app = await build();
      const { headers } = await app.inject(url);
      expect(headers['content-security-policy']).toContain("script-src 'self'");
      expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
      expect(headers['content-security-policy']).not.toMatch(/unsafe|upgrade-insecure/);
      expect(headers['x-content-type-options']).toBe('nosniff');
    },
  );

  test('nothing invites other sites to read replies', async () => {
    const app = await build();
    const { headers } = await app.inject({
      url: '/health',
      headers: { origin: 'https://elsewhere.example' },
    });
    expect(Object.keys(headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  });
});

describe('/docs', () => {
  test('has no script or style inside the page, so the policy above lets all of it run', async () => {
    const app = await build();
    const { text } = await request(app.server).get('/docs').expect(200);
    expect(text).toContain('id="swagger-ui"');
    for (const [, attributes, content] of text.matchAll(/<script([^>]*)>([\s\S]*?)<\/script>/g)) {
      expect(attributes).toContain('src=');
      expect(content?.trim()).toBe('');
    }
    expect(text).not.toMatch(/<style|\sstyle=|\son\w+=/);
  });

  test('every file that the page asks for is there', async () => {
    const app = await build();
    const { body } = await app.inject('/docs');
    const files = [...body.matchAll(/(?:src|href)="([^"]+)"/g)].map(([, file]) => file ?? '');
    expect(files.length).toBeGreaterThan(4);
    for (const file of files) expect((await app.inject(file)).statusCode, file).toBe(200);
  });
});

describe('the log', () => {
  const logged = async (headers: Record<string, string>) => {
    const lines: string[] = [];
    const app = await buildProbed(
      { LOG_LEVEL: 'trace' },
      { logStream: { write: (line) => void lines.push(line) } },
    );
    await app.inject({
      method: 'POST',
      url: '/probe',
      headers,
      payload: { ...goodProbe, secretMember: 'seahorse' },
    });
    return lines.join('');
  };

  test('says who asked for what', async () => {
    const text = await logged({});
    expect(text).toContain('"method":"POST","url":"/probe"');
    expect(text).toContain('"statusCode":400');
  });

  test('never says what was sent, nor a credential', async () => {
    const text = await logged({ authorization: 'Bearer swordfish', cookie: 'swordfish=1' });
    expect(text).not.toMatch(/seahorse|secretMember|swordfish/);
  });
});

test.each([
  ['false', '127.0.0.1'],
  ['loopback', '203.0.113.9'],
  ['1', '203.0.113.9'],
])('with TRUST_PROXY=%s a forwarded address is taken as %s', async (setting, address) => {
  const app = await build(
    { TRUST_PROXY: setting },
    {
      extend: (bare) => {
        bare.get('/who', async ({ ip }) => ip);
      },
    },
  );
  const { body } = await app.inject({
    url: '/who',
    headers: { 'x-forwarded-for': '198.51.100.7, 203.0.113.9' },
  });
  expect(body).toBe(address);
});
