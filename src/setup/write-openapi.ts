import { spawnSync } from 'node:child_process';
import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildApp } from '../app.ts';
import { writeWhole } from '../cli/write-output.ts';
import { readConfig } from '../config.ts';
import { exampleClock, openExampleStore } from '../contract/example-store.ts';
import { examples } from '../contract/examples.ts';
import { runExamples } from '../contract/run-examples.ts';

const pathOf = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));
const contractFile = pathOf('../../openapi/openapi.json');
const repliesFile = pathOf('../contract/example-replies.json');

const formatter = pathOf('../../node_modules/@biomejs/biome/bin/biome');

const write = (file: string, value: object) => writeWhole(file, `${JSON.stringify(value, null, 2)}\n`);

/** The committed contract is what the running app would serve, so it cannot say anything else. */
const { store, reset, dispose } = await openExampleStore();
const app = await buildApp(readConfig({ LOG_LEVEL: 'warn', RATE_LIMIT: '0' }), {
  refuseUnderPressure: false,
  clock: exampleClock,
  store,
});
const replies = await runExamples(app, examples, reset);
await mkdir(dirname(contractFile), { recursive: true });
await write(repliesFile, replies);
// this one is source, and formatted like all of it
spawnSync(process.execPath, [formatter, 'format', '--write', repliesFile], { stdio: 'inherit' });
await write(contractFile, app.contract(replies));
await app.close();
await dispose();
