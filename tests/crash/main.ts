/*
 * Kills a process in the middle of its writes, again and again on one file, and looks for lost changes:
 *
 *   npm run crash -- --times 200 --seed 7
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { crashOnce, firstRun } from './crash-run.ts';

const { values } = parseArgs({
  options: { times: { type: 'string', default: '200' }, seed: { type: 'string' } },
});
const times = wholeNumber('times', values.times);
const seed = wholeNumber('seed', values.seed ?? `${Math.floor(Math.random() * 2 ** 31)}`);

function wholeNumber(name: string, text: string): number {
  const value = Number(text);
  if (!Number.isInteger(value) || value < 0) throw new Error(`--${name} must be a whole number`);
  return value;
}

const say = (line: string): boolean => process.stdout.write(`${line}\n`);

const folder = await mkdtemp(join(tmpdir(), 'hemfold-crash-'));
say(`seed ${seed}, ${times} crashes`);
try {
  let run = firstRun;
  for (let crash = 1; crash <= times; crash++) {
    run = await crashOnce(folder, run, { seed, acknowledge: 1 + Math.floor(Math.random() * 30) });
    if (crash % 20 === 0 || crash === times)
      say(`${crash} crashes, ${run.held} changes, none lost; ${run.inFlight} done but not yet acknowledged`);
  }
} finally {
  await rm(folder, { recursive: true, force: true });
}
