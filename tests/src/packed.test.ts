import { readdir, readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { firstSpec } from '../../src/cli/first-spec.ts';
import { hemfoldVersion } from '../../src/version.ts';
import { projectFolder, start } from './run-program.ts';
import { tempFolder } from './temp-folder.ts';

/** npm compiles, packs and installs here, so this test takes as long as they do. */
const longestMs = 240_000;

// the node that runs this test, whatever the system has
const env = { PATH: `${dirname(process.execPath)}:${process.env.PATH}` };

async function succeed(command: string, words: readonly string[], cwd: string, input = ''): Promise<string> {
  const run = start(command, words, { cwd, env, input });
  const code = await run.ended;
  if (code !== 0)
    throw new Error(`${command} ${words.join(' ')} ended with ${code}\n${run.errors()}${run.output()}`);
  return run.output();
}

test('the packed package installs in an empty folder and does its work there', {
  timeout: longestMs,
}, async () => {
  const folder = await tempFolder();
  await succeed('npm', ['pack', '--silent', '--pack-destination', folder], projectFolder);
  const [archive = 'none'] = (await readdir(folder)).filter((name) => name.endsWith('.tgz'));
  expect(archive).toBe(`hemfold-${hemfoldVersion}.tgz`);

  await succeed('npm', ['init', '--yes', '--silent'], folder);
  await succeed(
    'npm',
    ['install', '--prefer-offline', '--omit=dev', '--no-audit', '--no-fund', archive],
    folder,
  );
  const packed = join(folder, 'node_modules', 'hemfold');
  expect((await readdir(packed)).toSorted()).toEqual(
    expect.arrayContaining(['LICENSE', 'dist', 'package.json']),
  );
  expect(await readdir(packed)).not.toContain('tests');

  expect(await succeed('npx', ['hemfold', '--version'], folder)).toBe(`${hemfoldVersion}\n`);
  expect(await succeed('npx', ['hemfold', '--help'], folder)).toContain('serve');
  await succeed('npx', ['hemfold', 'svg', '-', '-o', 'folder.svg'], folder, JSON.stringify(firstSpec));
  expect(await readFile(join(folder, 'folder.svg'), 'utf8')).toContain('<svg ');

  const served = start(process.execPath, [join(packed, 'dist/src/cli/main.js'), 'serve', '--port', '0'], {
    cwd: folder,
  });
  await expect.poll(() => served.output() + served.errors(), { timeout: 20_000 }).toContain('Ctrl+C');
  const [, url = ''] = /answers at (\S+)/.exec(served.output()) ?? [];
  expect(await (await fetch(`${url}/health`)).json()).toEqual({ status: 'ok' });
  const { paths } = (await (await fetch(`${url}/openapi.json`)).json()) as { paths: object };
  expect(Object.keys(paths)).toContain('/v1/folders/svg');
  served.child.kill('SIGTERM');
  expect(await served.ended).toBe(0);
});
