import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { firstSpec } from '../../../src/cli/first-spec.ts';
import { readDrawingSeal } from '../../../src/cli/watch/seal.ts';
import { watchFolder } from '../../../src/cli/watch/watch-folder.ts';
import { tempFolder } from '../temp-folder.ts';

/** Three specs of the museum shop: one that is drawn, another, and one that no sheet of this size can become. */
export const good = JSON.stringify(firstSpec);
export const other = JSON.stringify({ ...firstSpec, corners: 'mitred' });
export const tooSmall = JSON.stringify({ ...firstSpec, stock: { width: '60 mm', height: '80 mm' } });

/** A temporary folder by the names of its files. */
export async function watchedFolder(files: Readonly<Record<string, string>> = {}) {
  const path = await tempFolder();
  const at = (name: string) => join(path, name);
  const write = (name: string, text: string) => writeFileSync(at(name), text);
  for (const [name, text] of Object.entries(files)) write(name, text);
  return {
    path,
    at,
    write,
    has: (name: string) => existsSync(at(name)),
    read: (name: string) => readFileSync(at(name), 'utf8'),
    names: () => readdirSync(path).toSorted(),
  };
}

/** `hemfold watch --once` in this process. */
export async function watchOnce(folder: string, stop: AbortSignal = new AbortController().signal) {
  const text = { output: '', errors: '' };
  const terminal = {
    show: (words: string) => {
      text.output += words;
    },
    report: (words: string) => {
      text.errors += words;
    },
  };
  const code = await watchFolder(folder, { once: true }, terminal, stop);
  return { code, ...text };
}

/** A drawing by hemfold of which no byte is missing. */
export const isWhole = (svg: string): boolean =>
  readDrawingSeal(svg) !== undefined && svg.trimEnd().endsWith('</svg>');
