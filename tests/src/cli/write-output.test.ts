import { chmod, lstat, mkdir, readdir, readFile, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { writeWhole } from '../../../src/cli/write-output.ts';
import { tempFolder } from '../temp-folder.ts';

test('writes a new file and replaces an old one, leaving nothing beside it', async () => {
  const folder = await tempFolder();
  const file = join(folder, 'folder.svg');
  await writeWhole(file, 'one');
  await writeWhole(file, new TextEncoder().encode('two'));
  expect(await readFile(file, 'utf8')).toBe('two');
  expect(await readdir(folder)).toEqual(['folder.svg']);
});

test('a reader that opened the old file still reads all of it', async () => {
  const folder = await tempFolder();
  const file = join(folder, 'folder.svg');
  await writeWhole(file, 'old');
  const before = await stat(file);
  await writeWhole(file, 'new');
  expect((await stat(file)).ino, 'another file took the name').not.toBe(before.ino);
});

test('keeps the mode of the old file, and a link a link', async () => {
  const folder = await tempFolder();
  const file = join(folder, 'real.svg');
  const link = join(folder, 'link.svg');
  await writeFile(file, 'old');
  await chmod(file, 0o640);
  await symlink(file, link);
  await writeWhole(link, 'new');
  expect((await lstat(link)).isSymbolicLink()).toBe(true);
  expect(await readFile(file, 'utf8')).toBe('new');
  expect((await stat(file)).mode & 0o777).toBe(0o640);
});

test('writes straight to what is no regular file', async () => {
  await writeWhole('/dev/null', 'words');
  expect((await stat('/dev/null')).isCharacterDevice()).toBe(true);
});

test('a failure leaves no draft behind', async () => {
  const folder = await tempFolder();
  await mkdir(join(folder, 'taken'));
  await expect(writeWhole(join(folder, 'taken'), 'words')).rejects.toThrow('EISDIR');
  await expect(writeWhole(join(folder, 'missing', 'file'), 'words')).rejects.toThrow('ENOENT');
  expect(await readdir(folder)).toEqual(['taken']);
});
