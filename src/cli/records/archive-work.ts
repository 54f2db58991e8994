import { createReadStream, createWriteStream } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { buffer } from 'node:stream/consumers';
import type { ArchiveSource } from '../../archive/archive.ts';
import { BadArchive } from '../../archive/bad-archive.ts';
import { commandLine } from '../../members/audit.ts';
import type { Records } from '../../records.ts';
import { fileTrouble, standardStream } from '../read-spec.ts';
import { type RecordsWork, Refused } from './run-with-records.ts';

/** For its owner alone, and at every moment either the old file or the new one, whole. */
async function exportToFile({ archive }: Records, file: string): Promise<void> {
  const draft = `${file}.part`;
  await rm(draft, { force: true });
  try {
    await archive.exportTo(commandLine, createWriteStream(draft, { flags: 'wx', mode: 0o600, flush: true }));
    await rename(draft, file);
  } catch (error) {
    await rm(draft, { force: true }).catch(() => undefined);
    throw error;
  }
}

const isSystemError = (error: unknown): boolean => error instanceof Error && 'syscall' in error;

/** @throws {CommandFailed} for an error of the system at the file */
async function atFile<Result>(verb: string, file: string, work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    throw isSystemError(error) ? fileTrouble(verb, file, error) : error;
  }
}

export const exportTo =
  (file: string): RecordsWork =>
  async (records) => {
    if (file === standardStream) return records.archive.exportTo(commandLine, process.stdout);
    await atFile('write', file, () => exportToFile(records, file));
  };

/** A file is read anew each time; standard input can be read only once, so it is kept. */
async function sourceOf(file: string): Promise<ArchiveSource> {
  if (file !== standardStream) {
    await (await open(file)).close();
    return () => createReadStream(file);
  }
  const bytes = await buffer(process.stdin);
  return async function* () {
    yield bytes;
  };
}

export const restoreFrom =
  (file: string, { replace = false }: { readonly replace?: boolean }): RecordsWork =>
  async ({ archive }, { report }) => {
    const outcome = await atFile('read', file, async () =>
      archive.restore(commandLine, await sourceOf(file), { replace, needsAdmin: false }),
    ).catch((error: unknown) => {
      throw error instanceof BadArchive ? new Refused(`Nothing was restored. ${error.message}`) : error;
    });
    if (typeof outcome === 'string')
      throw new Refused(
        'Nothing was restored, since something is kept already or somebody is a member.\nWith --replace the file takes its place; export what is there first.',
      );
    const { members, things, versions } = outcome;
    report(`Restored: ${members} members, ${things} things, ${versions} versions.\n`);
  };
