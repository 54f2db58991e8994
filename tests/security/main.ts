/*
 * Takes every guard away, one at a time, in a copy of the project, and runs the tests of its item: each must fail
 * without it. Takes some minutes, so it is no part of npm test: `npm run guards`, or `npm run guards -- --item 4`.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, globSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { type Guard, guards } from './guards.ts';

const { values } = parseArgs({ options: { item: { type: 'string' } } });
const root = join(import.meta.dirname, '../..');
const copy = mkdtempSync(join(tmpdir(), 'hemfold-guards-'));
const parts = [
  'shared',
  'src',
  'routes',
  'tests',
  'openapi',
  'package.json',
  'tsconfig.json',
  'vitest.config.ts',
];
for (const part of parts) cpSync(join(root, part), join(copy, part), { recursive: true });
symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));

/** A run that hangs without its guard has failed, too. */
const longestMs = 180_000;

/** Whether the tests of an item pass in the copy. */
function passes(item: number): boolean {
  const [file] = globSync(`tests/security/api${item}-*.test.ts`, { cwd: copy });
  if (file === undefined) throw new Error(`API${item} has no test`);
  const vitest = join(copy, 'node_modules/vitest/vitest.mjs');
  const env = { ...process.env, NO_COLOR: '1' };
  const run = spawnSync(process.execPath, [vitest, 'run', file], {
    cwd: copy,
    env,
    encoding: 'utf8',
    timeout: longestMs,
  });
  if (run.error) return false;
  if (!/Tests +\d+ (?:passed|failed)/u.test(run.stdout))
    throw new Error(`no test ran: ${run.stdout}${run.stderr}`);
  return run.status === 0;
}

function failsWithout({ item, file, find, replace }: Guard): boolean {
  const path = join(copy, file);
  const text = readFileSync(path, 'utf8');
  if (text.split(find).length !== 2) throw new Error(`${file} has not once: ${find}`);
  writeFileSync(
    path,
    text.replace(find, () => replace),
  );
  try {
    return !passes(item);
  } finally {
    writeFileSync(path, text);
  }
}

const say = (text: string) => process.stdout.write(`${text}\n`);
const chosen = guards.filter(({ item }) => values.item === undefined || String(item) === values.item);
let missed = 0;
for (const item of new Set(chosen.map((each) => each.item)))
  if (!passes(item)) {
    say(`API${item} fails with every guard in place`);
    missed++;
  }
for (const guard of chosen) {
  const isSeen = failsWithout(guard);
  if (!isSeen) missed++;
  say(`API${guard.item} without "${guard.what}": ${isSeen ? 'fails, as it must' : 'PASSES'}`);
}
rmSync(copy, { recursive: true, force: true });
say(`${chosen.length} guards, ${missed} missed`);
process.exitCode = missed === 0 ? 0 : 1;
