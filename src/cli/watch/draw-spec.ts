import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { folderSpec } from '../../../shared/spec/folder-spec.ts';
import { fontsFor } from '../../folders/fonts-for.ts';
import { svgOfFolder } from '../../folders/svg-of-folder.ts';
import { problemFromInput } from '../../problem/problem-from.ts';
import { problemText } from '../../problem/problem-text.ts';
import { readWith } from '../../problem/read-with.ts';
import { CommandFailed, fileTrouble, mostSpecBytes, specFromBytes, tooLarge } from '../read-spec.ts';
import { speltSpec } from '../spelt-spec.ts';
import { writeWhole } from '../write-output.ts';
import { drawingName, inOneLine, problemName } from './file-names.ts';
import { isAsSeen, type SpecFile, type SpecGroup } from './look.ts';
import { drawingAt, problemAt, removeOwn } from './own-file.ts';
import { digestOf, sealDrawing, sealProblem } from './seal.ts';
import type { Outcome, Retry } from './spec-outcome.ts';

/** A reason for no drawing: in a line, and in full with a newline at its end. */
interface Reason {
  readonly line: string;
  readonly text: string;
  readonly retry: Retry;
}

const reason = (line: string, retry: Retry = 'never'): Reason => ({ line, text: `${line}\n`, retry });

/** Thrown for a spec without a drawing. */
class NoDrawing extends Error {
  override readonly name = 'NoDrawing';
  readonly reason: Reason;
  constructor(why: Reason) {
    super(why.line);
    this.reason = why;
  }
}

/** @throws {CommandFailed} for what cannot be written */
const write = (folder: string, name: string, text: string): Promise<void> =>
  writeWhole(join(folder, name), text).catch((error: unknown) => {
    throw fileTrouble('write', name, error);
  });

/** The one file of a group. */
function onlyFile({ base, files }: SpecGroup): SpecFile {
  const [file, ...others] = files;
  if (!file || others.length > 0) {
    const names = files.map(({ name }) => name).join(' and ');
    throw new NoDrawing(
      reason(`${names} would share the drawing ${drawingName(base)}: give all but one another name.`),
    );
  }
  return file;
}

async function bytesOf(folder: string, { name, size, trouble }: SpecFile): Promise<Uint8Array> {
  if (trouble) throw new NoDrawing(reason(fileTrouble('read', name, trouble).message, 'later'));
  if (size > mostSpecBytes) throw new NoDrawing(reason(tooLarge(name).message));
  return readFile(join(folder, name)).catch((error: unknown) => {
    throw new NoDrawing(reason(fileTrouble('read', name, error).message, 'later'));
  });
}

async function svgFrom(name: string, bytes: Uint8Array): Promise<string> {
  try {
    const spec = readWith(folderSpec, await speltSpec(await specFromBytes(name, bytes)));
    return svgOfFolder(spec, await fontsFor(spec));
  } catch (error) {
    const problem = problemFromInput(error);
    if (problem) throw new NoDrawing({ line: problem.detail, text: problemText(problem), retry: 'never' });
    if (error instanceof CommandFailed) throw new NoDrawing(reason(error.message, 'later'));
    // a fault of hemfold's own; it must not stop the work on all other files
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
    throw new NoDrawing({
      ...reason('hemfold itself failed here; please report it with this spec.'),
      text: `hemfold itself failed here; please report it with this spec.\n${stack}\n`,
    });
  }
}

/** Takes away the problem text of a name that has no problem any more, unless a person wrote or changed it. */
export async function removeProblem(folder: string, base: string): Promise<boolean> {
  const file = join(folder, problemName(base));
  const isOwn = (await problemAt(file)).is === 'own';
  if (isOwn) await removeOwn(file);
  return isOwn;
}

async function areAsSeen(folder: string, files: readonly SpecFile[]): Promise<boolean> {
  for (const file of files) if (!(await isAsSeen(folder, file))) return false;
  return true;
}

/** Draws one spec, unless the drawing there is of this very spec and no older. */
async function draw(folder: string, file: SpecFile, base: string): Promise<Outcome> {
  const bytes = await bytesOf(folder, file);
  if (!(await areAsSeen(folder, [file]))) return { is: 'moving' };
  const target = drawingName(base);
  const spec = digestOf(bytes);
  const before = await drawingAt(join(folder, target));
  if (before.is === 'own' && before.seal.spec === spec && before.mtimeMs >= file.mtimeMs) {
    await removeProblem(folder, base);
    return { is: 'current' };
  }
  const svg = await svgFrom(file.name, bytes);
  // a drawing of the same bytes, as `hemfold svg` writes it, loses nothing
  const there = await drawingAt(join(folder, target));
  if (there.is === 'foreign' && there.text !== svg)
    throw new NoDrawing(
      reason(
        `${target} is there already, and hemfold watch did not write it, or it was changed since. It is left alone: give it or the spec another name.`,
        'when-name-is-free',
      ),
    );
  await write(folder, target, sealDrawing(svg, spec));
  await removeProblem(folder, base);
  const [, title = ''] = /<title>([^<]*)</u.exec(svg) ?? [];
  return { is: 'drawn', line: `drawn as ${target} (${title})` };
}

const longestLine = 120;

/** As much as a line on a terminal needs to say when the rest is in a file. */
const shortened = (line: string): string =>
  line.length <= longestLine ? line : `${line.slice(0, longestLine).replace(/\s+\S*$/u, '')} …`;

/** The line on the terminal stands for the text where a person's file has its name. */
async function refuse(folder: string, { base, files }: SpecGroup, why: Reason): Promise<Outcome> {
  const drawing = join(folder, drawingName(base));
  if ((await drawingAt(drawing)).is === 'own') await removeOwn(drawing);
  const names = files.map(({ name }) => inOneLine(name)).join(', ');
  const text = sealProblem(`${names}: not drawn.\n\n${why.text}`);
  const target = problemName(base);
  const there = await problemAt(join(folder, target));
  if (there.is === 'foreign')
    return { is: 'refused', line: `refused: ${why.line} (${target} is not hemfold's)`, retry: why.retry };
  if (there.is === 'absent' || there.text !== text) await write(folder, target, text);
  return { is: 'refused', line: `refused, see ${target}: ${shortened(why.line)}`, retry: why.retry };
}

/**
 * Does one name: puts the drawing beside the spec, or the problem text, and takes away what is no longer true.
 * @param isRipe whether the spec has been unchanged for so long that a refusal is not for half a file
 */
export async function drawSpec(folder: string, group: SpecGroup, isRipe: boolean): Promise<Outcome> {
  try {
    return await draw(folder, onlyFile(group), group.base);
  } catch (error) {
    return await afterFailure(folder, group, isRipe, error).catch(failed);
  }
}

/** A file that could not be written or removed; every other error goes on. */
function failed(error: unknown): Outcome {
  if (!(error instanceof CommandFailed)) throw error;
  return { is: 'failed', line: error.message, retry: 'later' };
}

async function afterFailure(
  folder: string,
  group: SpecGroup,
  isRipe: boolean,
  error: unknown,
): Promise<Outcome> {
  if (!(error instanceof NoDrawing)) return failed(error);
  if (!(await areAsSeen(folder, group.files))) return { is: 'moving' };
  return isRipe ? refuse(folder, group, error.reason) : { is: 'unripe' };
}
