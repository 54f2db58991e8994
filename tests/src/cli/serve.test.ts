import { readFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { urlOf } from '../../../src/server.ts';
import { runHemfold, start, startHemfold } from '../run-program.ts';
import { addressOf } from '../served.ts';
import { tempFolder } from '../temp-folder.ts';

const serve = async (env: Readonly<Record<string, string>> = {}) =>
  startHemfold(['serve', '--port', '0'], { env: { DATA_DIR: await tempFolder(), ...env } });

describe('hemfold serve', () => {
  test.each(['SIGINT', 'SIGTERM'] as const)(
    'answers at the address it shows, and stops on %s with 0',
    async (signal) => {
      const run = await serve();
      const url = await addressOf(run);
      expect(await (await fetch(`${url}/health`)).json()).toEqual({ status: 'ok' });
      expect(run.output()).toContain(`${url}/docs`);
      run.child.kill(signal);
      expect(await run.ended).toBe(0);
      await expect(fetch(`${url}/health`)).rejects.toThrow();
    },
  );

  test('the line that it shows writes an SVG', async () => {
    const folder = await tempFolder();
    const run = await serve();
    await addressOf(run);
    const line = run
      .output()
      .split('\n')
      .find((each) => each.trim().startsWith('curl '));
    const paste = start('sh', ['-c', line ?? 'false'], { cwd: folder });
    expect(await paste.ended).toBe(0);
    expect(await readFile(join(folder, 'folder.svg'), 'utf8')).toMatch(/<svg [^>]*width="[\d.]+mm"/);
    run.child.kill('SIGTERM');
    expect(await run.ended).toBe(0);
  });

  test('--host and --port win over HOST and PORT', async () => {
    const run = startHemfold(['serve', '--port', '0', '--host', '127.0.0.1'], {
      env: { HOST: 'nowhere.invalid', PORT: 'x', DATA_DIR: await tempFolder() },
    });
    expect(await addressOf(run)).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    run.child.kill('SIGTERM');
    expect(await run.ended).toBe(0);
  });

  test('started by npm, it stops when npm and its shell are gone', async () => {
    const script = '"$0" src/cli/main.ts serve --port 0; exit $?'; // more than one command, so that the shell stays
    const run = start('sh', ['-c', script, process.execPath], {
      env: { npm_lifecycle_event: 'start', DATA_DIR: await tempFolder() },
    });
    const url = await addressOf(run);
    run.child.kill('SIGKILL');
    await expect
      .poll(
        () =>
          fetch(`${url}/health`).then(
            () => 'answers',
            () => 'gone',
          ),
        { timeout: 10_000 },
      )
      .toBe('gone');
  });

  test('a bad setting stops the start with 2', async () => {
    const { code, output, errors } = await runHemfold(['serve'], {
      env: { PORT: 'eighty', RATE_LIMIT: 'some' },
    });
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toMatch(/PORT: "eighty" is not[\s\S]*RATE_LIMIT: "some" is not/);
  });

  test('a port that is in use stops the start with 1', async () => {
    const taken = createServer();
    await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve));
    const address = taken.address();
    const port = typeof address === 'object' && address ? String(address.port) : '';
    try {
      const { code, errors } = await runHemfold(['serve', '--port', port], {
        env: { DATA_DIR: await tempFolder() },
      });
      expect(code).toBe(1);
      expect(errors).toContain(`port ${port}: something else is listening there`);
    } finally {
      taken.close();
    }
  });

  test('a host that is not known stops the start with 1', async () => {
    const env = { DATA_DIR: await tempFolder() };
    await runHemfold(['members', 'add', 'Keeper', '--scopes', 'admin'], { env }); // other hosts mean sign-in
    const { code, errors } = await runHemfold(['serve', '--port', '0', '--host', '192.0.2.1'], { env });
    expect(code).toBe(1);
    expect(errors).toContain('this machine does not have that address');
  });
});

test.each([
  ['127.0.0.1', 'http://127.0.0.1:8788'],
  ['0.0.0.0', 'http://localhost:8788'],
  ['::', 'http://localhost:8788'],
  ['::1', 'http://[::1]:8788'],
])('a service on %s is reached at %s', (host, url) => {
  expect(urlOf(host, 8788)).toBe(url);
});
