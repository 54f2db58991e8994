import { spawnSync } from 'node:child_process';
import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildApp } from '../app.ts';
import { writeWhole } from '../cli/write-output.ts';
import { readConfig } from '../config.ts';
import { openExampleRecords } from '../contract/example-records.ts';
import { examples } from '../contract/examples.ts';
import { runExamples } from '../contract/run-examples.ts';

const pathOf = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));
const contractFile = pathOf('../../openapi/openapi.json');
const repliesFile = pathOf('../contract/example-replies.json');

const formatter = pathOf('../../node_modules/@biomejs/biome/bin/biome');

const write = (file: string, value: object) => writeWhole(file, `${JSON.stringify(value, null, 2)}\n`);

/** The committed contract is what the running app would serve, so it cannot say anything else. */
const { settings, options, headers, reset, dispose } = await openExampleRecords();
const app = await buildApp(readConfig({ LOG_LEVEL: 'warn', ...settings }), {
  refuseUnderPressure: false,
  ...options,
});
const replies = await runExamples(app, examples, { headers, reset });
await mkdir(dirname(contractFile), { recursive: true });
await write(repliesFile, replies);
// this one is source, and formatted like all of it
spawnSync(process.execPath, [formatter, 'format', '--write', repliesFile], { stdio: 'inherit' });
await write(contractFile, app.contract(replies));
await app.close();
await dispose();
