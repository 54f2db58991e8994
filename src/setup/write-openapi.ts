import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildApp } from '../app.ts';
import { writeWhole } from '../cli/write-output.ts';
import { readConfig } from '../config.ts';

const file = fileURLToPath(new URL('../../openapi/openapi.json', import.meta.url));

/** The committed contract is what the running app would serve, so it cannot say anything else. */
const app = await buildApp(readConfig({ LOG_LEVEL: 'warn' }));
await mkdir(dirname(file), { recursive: true });
await writeWhole(file, `${JSON.stringify(app.contract(), null, 2)}\n`);
await app.close();
