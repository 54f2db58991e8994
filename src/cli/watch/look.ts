import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { CommandFailed } from '../read-spec.ts';
import { draftOf } from '../write-output.ts';
import { baseOf, baseOfProblem, inOneLine } from './file-names.ts';

/** A spec file as it was seen. */
export interface SpecFile {
  readonly name: string;
  readonly size: number;
  readonly mtimeMs: number;
  /** When the file system last changed anything about it; no program can set that back. */
  readonly ctimeMs: number;
  /** Differs after any change of the file, or after another one took its name. */
  readonly print: string;
  /** Why it cannot be looked at. */
  readonly trouble?: unknown;
}

/** Every spec file that would be drawn to the same name: one, unless somebody must choose. */
export interface SpecGroup {
  readonly base: string;
  readonly files: readonly SpecFile[];
  readonly print: string;
}

/** What is in the folder at one moment. */
export interface Look {
  readonly groups: ReadonlyMap<string, SpecGroup>;
  /** Names whose problem is told by a text, hemfold's or not. */
  readonly problems: readonly string[];
}

const reasons: Readonly<Record<string, string>> = {
  EACCES: 'this user may not look into it',
  ENOENT: 'there is no such folder',
  ENOTDIR: 'it is no folder',
};

/** A folder that cannot be watched, or no longer. */
function folderTrouble(folder: string, error: unknown): CommandFailed {
  const { code, message } = error as NodeJS.ErrnoException;
  return new CommandFailed(`Cannot look into ${inOneLine(folder)}: ${reasons[code ?? ''] ?? message}.`);
}

const isGone = (error: unknown) => (error as NodeJS.ErrnoException).code === 'ENOENT';

/** @returns undefined for what is gone again, or is no regular file */
async function specFileAt(folder: string, name: string): Promise<SpecFile | undefined> {
  try {
    const stats = await stat(join(folder, name));
    if (!stats.isFile()) return undefined;
    const { size, mtimeMs, ctimeMs, ino } = stats;
    return { name, size, mtimeMs, ctimeMs, print: `${name} ${size} ${mtimeMs} ${ctimeMs} ${ino}` };
  } catch (trouble) {
    if (isGone(trouble)) return undefined;
    return { name, size: 0, mtimeMs: 0, ctimeMs: 0, print: `${name} ?`, trouble };
  }
}

/** Names that differ in case alone are one on many machines, so their drawings would be too. */
const sharedName = (base: string) => base.toLowerCase().normalize();

function groupsOf(files: readonly SpecFile[]): ReadonlyMap<string, SpecGroup> {
  const lists = Map.groupBy(files, ({ name }) => sharedName(baseOf(name) ?? name));
  return new Map(
    [...lists.values()].map((list) => {
      const base = baseOf(list[0]?.name ?? '') ?? '';
      return [base, { base, files: list, print: list.map(({ print }) => print).join('\n') }];
    }),
  );
}

/**
 * Looks at a folder, not below it.
 * @throws {CommandFailed} when it is gone, or cannot be read
 */
export async function lookAt(folder: string): Promise<Look> {
  const entries = await readdir(folder, { withFileTypes: true }).catch((error: unknown) => {
    throw folderTrouble(folder, error);
  });
  const names = entries.filter((entry) => !entry.isDirectory()).map(({ name }) => name);
  const files: SpecFile[] = [];
  for (const name of names.filter((each) => baseOf(each) !== undefined).toSorted()) {
    const file = await specFileAt(folder, name);
    if (file) files.push(file);
  }
  return { groups: groupsOf(files), problems: names.flatMap((name) => baseOfProblem(name) ?? []) };
}

/** Whether a file is still as it was seen. */
export async function isAsSeen(folder: string, file: SpecFile): Promise<boolean> {
  return (await specFileAt(folder, file.name))?.print === file.print;
}

/** Removes the drafts that a hemfold which was killed left behind. */
export async function removeDrafts(folder: string): Promise<void> {
  const entries = await readdir(folder, { withFileTypes: true }).catch((error: unknown) => {
    throw folderTrouble(folder, error);
  });
  const isMadeHere = (name: string) => name.endsWith('.svg') || baseOfProblem(name) !== undefined;
  for (const entry of entries)
    if (entry.isFile() && isMadeHere(draftOf(entry.name) ?? ''))
      await rm(join(folder, entry.name), { force: true }).catch(() => undefined); // litter, no more
}
