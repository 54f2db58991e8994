import { lstat, readFile, rm } from 'node:fs/promises';
import { basename } from 'node:path';
import { fileTrouble } from '../read-spec.ts';
import { type DrawingSeal, readDrawingSeal, readProblemSeal } from './seal.ts';

/** What has the name that hemfold would write to. */
export type Standing<Seal> =
  | { readonly is: 'absent' }
  | { readonly is: 'own'; readonly text: string; readonly seal: Seal; readonly mtimeMs: number }
  /** Somebody else's; `text` is undefined for what is no plain file, or too large to be hemfold's. */
  | { readonly is: 'foreign'; readonly text: string | undefined };

/** Far above any drawing. */
const mostBytes = 64 * 1024 * 1024;

const isAbsent = (error: unknown) => (error as NodeJS.ErrnoException).code === 'ENOENT';

async function standingOf<Seal>(
  file: string,
  readSeal: (text: string) => Seal | undefined,
): Promise<Standing<Seal>> {
  try {
    const stats = await lstat(file); // not through a link: hemfold makes none
    if (!stats.isFile() || stats.size > mostBytes) return { is: 'foreign', text: undefined };
    const text = await readFile(file, 'utf8');
    const seal = readSeal(text);
    return seal ? { is: 'own', text, seal, mtimeMs: stats.mtimeMs } : { is: 'foreign', text };
  } catch (error) {
    if (isAbsent(error)) return { is: 'absent' };
    throw fileTrouble('read', basename(file), error);
  }
}

/** @throws {CommandFailed} when it is there and cannot be read */
export const drawingAt = (file: string): Promise<Standing<DrawingSeal>> => standingOf(file, readDrawingSeal);

/** @throws {CommandFailed} when it is there and cannot be read */
export const problemAt = (file: string): Promise<Standing<string>> => standingOf(file, readProblemSeal);

/** Removes a file that was found to be hemfold's; one that is gone already is no fault. */
export async function removeOwn(file: string): Promise<void> {
  await rm(file, { force: true }).catch((error: unknown) => {
    throw fileTrouble('remove', basename(file), error);
  });
}

/** A text that changes when whatever has that name does. */
export async function printOf(file: string): Promise<string> {
  try {
    const { ino, size, mtimeMs } = await lstat(file);
    return `${ino} ${size} ${mtimeMs}`;
  } catch {
    return '';
  }
}
