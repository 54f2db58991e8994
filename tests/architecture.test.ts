import { globSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '..');

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

const statement = /^(?:import|export)\s+(type\s)?(?:[^'";]*?\sfrom\s+)?'([^']+)'/gmu;

/** Imports in a file's text: project files as paths from the root, packages by name. */
function importsIn(file: string, text: string): Import[] {
  return [...text.matchAll(statement)].map(([, type, target = '']) => ({
    from: file,
    to: target.startsWith('.') ? normalize(join(dirname(file), target)) : target,
    typeOnly: type !== undefined,
  }));
}

const files = globSync('{shared,src,routes}/**/*.ts', { cwd: root });
const imports = files.flatMap((file) => importsIn(file, readFileSync(join(root, file), 'utf8')));

const isOwn = (target: string) => /^(?:shared|src|routes|tests)\//u.test(target);
const folder = (path: string) => path.split('/')[0] ?? '';

interface MayImport {
  readonly folders: readonly string[];
  /** Absent where a folder may import any. */
  readonly packages?: readonly string[];
}

/** What each top folder may import, by the last column of the table in DEVELOPERS.md. */
function readTable(text: string): ReadonlyMap<string, MayImport> {
  const rows = text.matchAll(/^\| `(shared|src|routes)\/` +\|.*\| *([^|]+?) *\|$/gmu);
  return new Map(
    [...rows].map(([, own = '', last = '']) => {
      const items = last.split(', ');
      const folders = items.flatMap((item) => /^`(\w+)\/`$/u.exec(item)?.[1] ?? []);
      const packages = items.filter((item) => item !== 'itself' && !item.startsWith('`'));
      return [
        own,
        {
          folders: items.includes('itself') ? [own, ...folders] : folders,
          ...(own === 'shared' ? { packages } : {}),
        },
      ];
    }),
  );
}

const may = readTable(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'));

const trespasses = (list: readonly Import[]) =>
  list.filter(({ from, to }) => {
    const { folders, packages } = may.get(folder(from)) ?? { folders: [] };
    return isOwn(to) ? !folders.includes(folder(to)) : packages?.includes(to) === false;
  });

/** Files that can be reached from themselves, by imports that are there when the program runs. */
function cycles(list: readonly Import[]): string[] {
  const next = new Map<string, string[]>();
  for (const { from, to, typeOnly } of list) if (!typeOnly) next.set(from, [...(next.get(from) ?? []), to]);
  return [...next.keys()].filter((start) => {
    const seen = new Set<string>();
    const queue = [...(next.get(start) ?? [])];
    for (const file of queue) {
      if (file === start) return true;
      if (seen.has(file)) continue;
      seen.add(file);
      queue.push(...(next.get(file) ?? []));
    }
    return false;
  });
}

describe('imports', () => {
  test('are found at all', () => {
    expect(files.length).toBeGreaterThan(80);
    expect(imports.length).toBeGreaterThan(300);
  });

  test('keep to the table in DEVELOPERS.md', () => {
    expect(trespasses(imports)).toEqual([]);
  });

  test('never go round in a circle', () => {
    expect(cycles(imports)).toEqual([]);
  });

  test('the checks fail on a trespass and on a circle', () => {
    const text = "import { readFile } from 'node:fs';\nimport { app } from '../src/app.ts';\n";
    expect(trespasses(importsIn('shared/a.ts', text))).toHaveLength(2);
    expect(trespasses(importsIn('src/a.ts', "import { z } from '../routes/b.ts';"))).toHaveLength(1);
    const round = [
      importsIn('shared/a.ts', "import { b } from './b.ts';"),
      importsIn('shared/b.ts', "export { a } from './a.ts';"),
    ];
    expect(cycles(round.flat())).toEqual(['shared/a.ts', 'shared/b.ts']);
  });
});

describe('the pure core', () => {
  const uses = (text: string) =>
    /\b(?:Date\.now|new Date\(\)|Math\.random|process\.|globalThis\.|performance\.)/u.test(text);

  test('asks for no time, no chance and no process', () => {
    const guilty = files.filter(
      (file) => folder(file) === 'shared' && uses(readFileSync(join(root, file), 'utf8')),
    );
    expect(guilty).toEqual([]);
    expect(uses('const seed = Math.random();')).toBe(true);
  });
});
