import { connect } from 'node:net';
import request from 'supertest';
import { describe, expect, test } from 'vitest';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';
import { buildProbed, goodProbe } from '../src/probe-app.ts';

const json = { 'content-type': 'application/json' };

describe('what the schema refuses', () => {
  const cases: readonly [string, unknown, readonly { path: string; message: string; remedy?: string }[]][] = [
    [
      'an unknown member, by name and with the nearest known one',
      { ...goodProbe, cuont: 2 },
      [
        {
          path: '/cuont',
          message: '"cuont" is not known here',
          remedy: 'did you mean "count"? known here: style, item, count, grid, notes',
        },
      ],
    ],
    [
      'each of several unknown members',
      { ...goodProbe, a: 1, 'b/c~d': 2 },
      [
        {
          path: '/a',
          message: '"a" is not known here',
          remedy: 'known here: style, item, count, grid, notes',
        },
        {
          path: '/b~1c~0d',
          message: '"b/c~d" is not known here',
          remedy: 'known here: style, item, count, grid, notes',
        },
      ],
    ],
    [
      'a slip inside the option of a union that was meant',
      { ...goodProbe, item: { widht: 3, height: 4 } },
      [
        { path: '/item/width', message: 'is missing: expected a number' },
        {
          path: '/item/widht',
          message: '"widht" is not known here',
          remedy: 'did you mean "width"? known here: width, height',
        },
      ],
    ],
    [
      'a wrong word, with the words that are known',
      { ...goodProbe, item: { size: 'smal' } },
      [
        {
          path: '/item/size',
          message: '"smal" is not known here',
          remedy: 'did you mean "small"? known here: small, large',
        },
      ],
    ],
    [
      'a union of other kinds than the input',
      { ...goodProbe, item: 7 },
      [{ path: '/item', message: 'expected an object' }],
    ],
    [
      'a number where a fixed word would have served as well',
      { ...goodProbe, grid: true },
      [{ path: '/grid', message: 'is not known here', remedy: 'use "none"' }],
    ],
    [
      'a fault deep in a list',
      { ...goodProbe, notes: [{ text: 'ok' }, { text: 5 }] },
      [{ path: '/notes/1/text', message: 'expected a string, not 5' }],
    ],
    [
      'a missing member',
      { item: { size: 'small' } },
      [{ path: '/style', message: 'is missing', remedy: 'use one of: flat, tall' }],
    ],
    ['a body of another kind', [], [{ path: '', message: 'expected an object, not a list' }]],
  ];

  test.each(cases)('%s', async (_name, body, errors) => {
    const app = await buildProbed();
    const problem = expectProblem(
      await app.inject({ method: 'POST', url: '/probe', headers: json, payload: JSON.stringify(body) }),
      400,
    );
    expect(problem.type).toBe('/problems/invalid-spec');
    expect(problem.errors).toHaveLength(errors.length);
    for (const [index, error] of errors.entries()) {
      expect(problem.errors[index]).toMatchObject({
        ...error,
        message: expect.stringContaining(error.message),
      });
    }
  });

  test('a good body is answered, so the cases above fail for their own reason', async () => {
    const app = await buildProbed();
    const reply = await request(app.server).post('/probe').send(goodProbe).expect(200);
    expect(reply.body).toEqual({ count: 1 });
  });

  test('thousands of unknown members give a short reply', async () => {
    const app = await buildProbed();
    const many = Object.fromEntries(Array.from({ length: 20_000 }, (_, index) => [`m${index}`, 1]));
    const problem = expectProblem(
      await app.inject({ method: 'POST', url: '/probe', payload: { ...goodProbe, ...many } }),
      400,
    );
    expect(problem.errors).toHaveLength(33);
  });

  test('a query is refused by name too, as a plain 400', async () => {
    const app = await buildProbed();
    const problem = expectProblem(await app.inject('/probe/query?widht=3'), 400);
    expect(problem.type).toBe('about:blank');
    expect(problem.errors.map(({ path }) => path)).toEqual(['/width', '/widht']);
  });
});

describe('bad input is never a fault of the service', () => {
  const deep = (open: string, close: string, count: number) => open.repeat(count) + close.repeat(count);
  const bodies: readonly [string, number, string | Buffer][] = [
    ['empty', 400, ''],
    ['white space', 400, ' \n '],
    ['malformed', 400, '{"style": "flat",}'],
    ['cut off', 400, '{"style": "fl'],
    ['NaN', 400, '{"style": NaN}'],
    ['a number beyond all bounds', 400, '{"style":"flat","item":{"width":1e400,"height":1}}'],
    ['the largest numbers', 200, '{"style":"flat","item":{"width":1e308,"height":1e-320}}'],
    ['minus zero', 400, '{"style":"flat","item":{"width":-0,"height":1}}'],
    ['null', 400, 'null'],
    ['a bare string', 400, '"flat"'],
    ['deep lists', 400, deep('[', ']', 100_000)],
    ['deep objects', 400, deep('{"a":', '}', 20_000).replace('}', '1}')],
    ['deep lists that are never closed', 400, '['.repeat(200_000)],
    ['__proto__', 400, '{"style":"flat","__proto__":{"count":2}}'],
    ['__proto__ further down', 400, '{"style":"flat","item":{"__proto__":{"size":"small"}}}'],
    ['constructor', 400, '{"style":"flat","constructor":{"prototype":{"count":2}}}'],
    ['names of object methods', 400, '{"toString":1,"hasOwnProperty":1,"valueOf":1}'],
    ['invalid UTF-8', 400, Buffer.from([0x7b, 0x22, 0xc3, 0x28, 0x22, 0x7d])],
    ['UTF-16', 400, Buffer.from('{"style":"flat"}', 'utf16le')],
    ['a lone surrogate', 400, '{"style":"\\ud800"}'],
    ['NUL in a name', 400, '{"\\u0000":1}'],
    ['a long name', 400, JSON.stringify({ ['x'.repeat(200_000)]: 1 })],
    ['a long word', 400, JSON.stringify({ ...goodProbe, style: 'x'.repeat(200_000) })],
    ['a long list', 400, JSON.stringify({ ...goodProbe, notes: Array.from({ length: 50_000 }, () => 1) })],
    ['a byte order mark before good JSON', 200, `\ufeff${JSON.stringify(goodProbe)}`],
    ['2 MB', 413, JSON.stringify({ style: 'x'.repeat(2_000_000) })],
  ];

  test.each(bodies)('%s: %i', async (_name, status, payload) => {
    const app = await buildProbed();
    const reply = await app.inject({ method: 'POST', url: '/probe', headers: json, payload });
    if (status === 200) expect(reply.statusCode).toBe(200);
    else expect(expectProblem(reply, status).detail).not.toBe('');
  });

  test('a malformed body is told line, column and cause', async () => {
    const app = await buildProbed();
    const payload = '{\n  "style": "flat",\n  "count": 1,\n}';
    const problem = expectProblem(
      await app.inject({ method: 'POST', url: '/probe', headers: json, payload }),
      400,
    );
    expect(problem.type).toBe('about:blank');
    expect(problem.detail).toBe(
      'the JSON is malformed at line 4, column 1: expected a name in double quotes; JSON has no comma after the last entry',
    );
  });
});

describe('plain HTTP errors', () => {
  test('404 for a URL that is not there, whatever is sent to it', async () => {
    const app = await build();
    expect(expectProblem(await app.inject('/nothing'), 404).type).toBe('about:blank');
    expectProblem(await app.inject({ method: 'POST', url: '/nothing', headers: json, payload: '{' }), 404);
  });

  test('405 names the methods that the URL has', async () => {
    const app = await build();
    const reply = await app.inject({ method: 'DELETE', url: '/health' });
    expectProblem(reply, 405);
    expect(reply.headers.allow).toBe('GET, HEAD');
  });

  test('405 for a URL with a part that varies', async () => {
    const app = await build();
    expectProblem(await app.inject({ method: 'PUT', url: '/problems/invalid-spec' }), 405);
  });

  test.each(['text/plain', 'application/x-www-form-urlencoded', 'text/json', 'image/svg+xml', 'nonsense'])(
    '415 for %s',
    async (type) => {
      const app = await buildProbed();
      const headers = { 'content-type': type };
      expectProblem(await app.inject({ method: 'POST', url: '/probe', headers, payload: 'x' }), 415);
    },
  );

  test('415 for a body without a media type', async () => {
    const app = await buildProbed();
    const reply = await app.inject({
      method: 'POST',
      url: '/probe',
      headers: { 'content-length': '2' },
      payload: '{}',
    });
    expectProblem(reply, 415);
  });

  test('400 for neither a body nor a media type', async () => {
    const app = await buildProbed();
    const problem = expectProblem(await app.inject({ method: 'POST', url: '/probe' }), 400);
    expect(problem.errors[0]).toMatchObject({ path: '', message: 'is missing: expected an object' });
  });

  test('400 for a URL that is badly encoded', async () => {
    const app = await build();
    expectProblem(await app.inject('/health/%zz'), 400);
  });

  test('409 and others keep the words of the route', async () => {
    const app = await buildProbed();
    expect(expectProblem(await app.inject('/probe/clash'), 409).detail).toBe('That name is taken.');
  });

  test('413 closes the connection and says the limit', async () => {
    const app = await buildProbed();
    const reply = await request(app.server)
      .post('/probe')
      .send({ style: 'x'.repeat(300_000) })
      .expect(413);
    expect(reply.body.detail).toBe('The body is larger than 256 KiB.');
  });

  test('429 says when to come back, and counts URLs that are not there', async () => {
    const app = await build({ RATE_LIMIT: '2' });
    await app.inject('/openapi.json');
    await app.inject('/nothing');
    const reply = await app.inject('/nothing');
    expect(expectProblem(reply, 429).title).toBe('Too Many Requests');
    expect(Number(reply.headers['retry-after'])).toBeGreaterThan(0);
  });

  test('503 under pressure says when to come back, while /health/live stays well', async () => {
    const app = await build({}, { refuseUnderPressure: true });
    // the least that can be measured: the process has always used more heap than this
    const pressed = await build({}, { refuseUnderPressure: true, mostHeapBytes: 1 });
    await expect.poll(async () => (await pressed.inject('/health')).statusCode, { timeout: 5_000 }).toBe(503);
    const reply = await pressed.inject('/health');
    expectProblem(reply, 503);
    expect(reply.headers['retry-after']).toBe('5');
    expect((await pressed.inject('/health/live')).statusCode).toBe(200);
    expect((await app.inject('/health')).statusCode).toBe(200);
  });

  test('what is not HTTP is answered on the bare connection', async () => {
    const app = await build();
    await app.listen({ host: '127.0.0.1', port: 0 });
    const address = app.server.address();
    if (typeof address !== 'object' || address === null) throw new Error('no address');
    const text = await new Promise<string>((resolve, reject) => {
      let received = '';
      const socket = connect(address.port, '127.0.0.1', () => socket.write('NONSENSE\r\n\r\n'));
      socket.on('data', (data) => {
        received += data;
      });
      socket.on('close', () => resolve(received));
      socket.on('error', reject);
    });
    const [head = '', body = ''] = text.split('\r\n\r\n');
    expect(head).toMatch(/^HTTP\/1\.1 400 Bad Request\r\n/);
    expect(JSON.parse(body)).toMatchObject({ status: 400, type: 'about:blank' });
  });
});

describe('422', () => {
  test('a refusal carries its bound, shortfall and remedies', async () => {
    const app = await buildProbed();
    const problem = expectProblem(await app.inject({ method: 'POST', url: '/probe/refused' }), 422);
    expect(problem).toEqual({
      type: '/problems/cannot-be-folded',
      title: 'This cannot be made',
      status: 422,
      detail: 'The sheet is 12 mm too narrow.',
      errors: [{ path: '/stock/width', message: 'too narrow', remedy: 'use a wider sheet' }],
      bound: 'sheet width',
      shortfall: { mm: 12 },
      remedies: [{ message: 'use the next larger sheet' }],
    });
  });

  test.each([
    ['invalid-spec', 'JSON Pointer'],
    ['cannot-be-folded', '"shortfall"'],
  ])('its type leads to an explanation: %s', async (name, word) => {
    const app = await build();
    const reply = await app.inject(`/problems/${name}`);
    expect(reply.statusCode).toBe(200);
    expect(reply.headers['content-type']).toBe('text/plain; charset=utf-8');
    expect(reply.body).toContain(word);
  });

  test('a type that is not there is refused', async () => {
    const app = await build();
    expectProblem(await app.inject('/problems/bored'), 400);
  });
});

describe('500', () => {
  test.each(['/probe/fault', '/probe/reply'])('%s says nothing of its cause, and logs it', async (url) => {
    const lines: string[] = [];
    const app = await buildProbed(
      { LOG_LEVEL: 'error' },
      { logStream: { write: (line) => void lines.push(line) } },
    );
    const reply = await app.inject(url);
    const problem = expectProblem(reply, 500);
    expect(problem.detail).toBe('The service failed, and has logged why.');
    expect(reply.body).not.toMatch(/swordfish|stack|node_modules|\.ts/);
    expect(lines.join('')).toContain(String(problem.requestId));
    expect(lines.join('')).toMatch(url === '/probe/fault' ? /swordfish/ : /schema/);
  });
});

test('what a style never has is refused with the advice to leave it out', async () => {
  const app = await build();
  const payload = { style: 'card-base', contents: { item: { size: 'iso-a6' } } };
  const reply = await app.inject({ method: 'POST', url: '/v1/folders/plan', payload });
  expect(reply.statusCode).toBe(400);
  expect(reply.json().errors).toEqual([
    {
      path: '/contents',
      message: 'this style holds nothing, so it takes no contents',
      remedy: 'leave it out',
    },
  ]);
});
