import { spawnSync } from 'node:child_process';
import { copyFile, mkdir, realpath, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { fits, missingPackages } from '../../../src/setup/ensure-installed.mjs';
import { projectFolder } from '../run-program.ts';
import { tempFolder } from '../temp-folder.ts';

const there = () => true;

describe('missingPackages', () => {
  test.each([
    [
      'nothing is missing',
      { 'node_modules/a': { version: '1.0.0' } },
      { 'node_modules/a': { version: '1.0.0' } },
      [],
    ],
    ['a package is missing', { 'node_modules/a': { version: '1.0.0' } }, {}, ['node_modules/a']],
    [
      'a version differs',
      { 'node_modules/a': { version: '1.0.1' } },
      { 'node_modules/a': { version: '1.0.0' } },
      ['node_modules/a'],
    ],
    ['the project itself is no package', { '': { version: '1.0.0' } }, {}, []],
    ['a link has no version', { 'node_modules/a': { link: true } }, {}, []],
    [
      'an optional package of another system',
      { 'node_modules/a': { version: '1.0.0', optional: true, os: ['sunos'] } },
      {},
      [],
    ],
    [
      'an optional package of another processor',
      { 'node_modules/a': { version: '1.0.0', optional: true, cpu: ['wasm32'] } },
      {},
      [],
    ],
    [
      'an optional package that only such a one needs',
      { 'node_modules/a': { version: '1.0.0', optional: true } },
      {},
      [],
    ],
    [
      'an optional package of this system',
      { 'node_modules/a': { version: '1.0.0', optional: true, os: [process.platform], cpu: [process.arch] } },
      {},
      ['node_modules/a'],
    ],
    [
      'a package of another system that is not optional',
      { 'node_modules/a': { version: '1.0.0', os: ['sunos'] } },
      {},
      ['node_modules/a'],
    ],
  ])('%s', (_name, wanted, present, missing) => {
    expect(missingPackages(wanted, present, there)).toEqual(missing);
  });

  test('a package whose folder is gone is missing', () => {
    const entries = { 'node_modules/a': { version: '1.0.0' } };
    expect(missingPackages(entries, entries, () => false)).toEqual(['node_modules/a']);
  });
});

test.each([
  [undefined, true],
  [[], true],
  [['linux'], true],
  [['darwin', 'linux'], true],
  [['darwin'], false],
  [['!linux'], false],
  [['!win32'], true],
])('a list %j fits linux: %s', (list, fit) => {
  expect(fits(list, 'linux')).toBe(fit);
});

test('where everything is installed it says nothing and does nothing', () => {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(projectFolder, 'src/setup/ensure-installed.mjs')],
    {
      encoding: 'utf8',
      env: { ...process.env, PATH: '/nowhere' }, // so that it could not install
    },
  );
  expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: '', stderr: '' });
});

test('what npm says while it installs is kept off standard output, where a command writes its drawing', async () => {
  const folder = await realpath(await tempFolder());
  const file = 'src/setup/ensure-installed.mjs';
  await mkdir(join(folder, 'src/setup'), { recursive: true });
  await copyFile(join(projectFolder, file), join(folder, file));
  await writeFile(join(folder, 'package-lock.json'), '{"packages":{"node_modules/a":{"version":"1.0.0"}}}');
  await writeFile(join(folder, 'npm'), '#!/bin/sh\necho "added 1 package"\n', { mode: 0o755 });
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(folder, file)], {
    encoding: 'utf8',
    env: { ...process.env, PATH: `${folder}:${process.env.PATH}` },
  });
  expect({ status, stdout }).toEqual({ status: 0, stdout: '' });
  expect(stderr).toContain('added 1 package');
});
