import { readFile } from 'node:fs/promises';
import { readJson } from '../problem/read-json.ts';
import { readYaml } from './read-yaml.ts';

/** The name that stands for standard input or output, as POSIX utilities use it. */
export const standardStream = '-';

/** Far above any spec; a file that is larger was named by mistake. */
export const mostSpecBytes = 256 * 1024;

/** Thrown for a failure that is not the spec's fault; the message is ready for a terminal. */
export class CommandFailed extends Error {
  override readonly name = 'CommandFailed';
}

const reasons: Readonly<Record<string, string>> = {
  EACCES: 'it may not be opened by this user',
  EBUSY: 'another program holds it',
  EISDIR: 'it is a folder',
  ELOOP: 'its links go round in a circle',
  ENAMETOOLONG: 'its name is too long',
  ENOENT: 'there is no such file',
  ENOSPC: 'the disk is full',
  ENOTDIR: 'a part of its path is not a folder',
  EROFS: 'its file system is read-only',
};

/** Why a file could not be read or written, in words. */
export function fileTrouble(verb: string, file: string, error: unknown): CommandFailed {
  const { code, message } = error as NodeJS.ErrnoException;
  return new CommandFailed(`Cannot ${verb} ${file}: ${reasons[code ?? ''] ?? message}.`);
}

async function readStandardInput(): Promise<Buffer> {
  const parts: Buffer[] = [];
  let bytes = 0;
  for await (const part of process.stdin) {
    parts.push(part as Buffer);
    bytes += (part as Buffer).length;
    if (bytes > mostSpecBytes) break;
  }
  return Buffer.concat(parts);
}

/** Said of a file that is larger than {@link mostSpecBytes}. */
export const tooLarge = (file: string) =>
  new CommandFailed(`${file} is larger than 256 KiB, so it is no spec.`);

/**
 * Reads the bytes of a spec: YAML when the file's name ends in .yaml or .yml, else JSON.
 * @throws {UnreadableJson} for text that is neither
 */
export const specFromBytes = async (file: string, bytes: Uint8Array): Promise<unknown> =>
  /\.ya?ml$/iu.test(file) ? readYaml(bytes) : readJson(bytes);

/**
 * Reads a spec from a file, or from standard input for `-`.
 * @throws {CommandFailed} for a file that cannot be read
 * @throws {UnreadableJson} for text that is neither JSON nor, in a file of that ending, YAML
 */
export async function readSpecFile(file: string): Promise<unknown> {
  const read = file === standardStream ? readStandardInput() : readFile(file);
  const bytes = await read.catch((error: unknown) => {
    throw fileTrouble('read', file, error);
  });
  if (bytes.length > mostSpecBytes) throw tooLarge(file);
  return specFromBytes(file, bytes);
}
