import { randomUUID } from 'node:crypto';
import { open, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** Where the file will really be, so that a link stays a link; a file that is not there yet is itself. */
async function resolveTarget(file: string): Promise<string> {
  try {
    return await realpath(file);
  } catch {
    return file;
  }
}

const draftName = (name: string): string => `.${name}.${randomUUID().slice(0, 8)}.tmp`;

/** The name of the file that a draft was to become; undefined for the name of any other file. */
export const draftOf = (name: string): string | undefined => /^\.(.+)\.[\da-f]{8}\.tmp$/u.exec(name)?.[1];

async function replaceWhole(
  target: string,
  content: string | Uint8Array,
  mode: number | undefined,
): Promise<void> {
  const draft = join(dirname(target), draftName(basename(target)));
  try {
    const handle = await open(draft, 'wx', mode);
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(draft, target);
  } catch (error) {
    await rm(draft, { force: true });
    throw error;
  }
}

/**
 * Writes a file so that it is at every moment either the old one or the new one, whole. What is no regular file,
 * such as a pipe, is written straight, since replacing it would remove it.
 */
export async function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  const target = await resolveTarget(file);
  const present = await stat(target).catch(() => undefined);
  if (present && !present.isFile()) return writeFile(target, content);
  return replaceWhole(target, content, present && present.mode & 0o777);
}

/** Writes to standard output and waits until it is taken; a reader that has left is no fault. */
export function writeToStandardOutput(content: string | Uint8Array): Promise<void> {
  const { promise, resolve, reject } = Promise.withResolvers<void>();
  const done = (error?: Error | null) => {
    if (error && (error as NodeJS.ErrnoException).code !== 'EPIPE') reject(error);
    else resolve();
  };
  process.stdout.once('error', done);
  process.stdout.write(content, done);
  return promise;
}
