import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { onTestFinished } from 'vitest';
import { type AppOptions, buildApp } from '../../src/app.ts';
import { readConfig } from '../../src/config.ts';
import { openExampleRecords } from '../../src/contract/example-records.ts';

/**
 * A ready app that closes when its test ends, with a store of its own. It logs nothing, and does not refuse work under pressure, since a
 * test may load its own process.
 * @param settings environment variables
 */
export async function build(
  settings: Readonly<Record<string, string>> = {},
  options: AppOptions = {},
): Promise<FastifyInstance> {
  const folder = settings.DATA_DIR ?? (await mkdtemp(join(tmpdir(), 'hemfold-app-')));
  const app = await buildApp(readConfig({ LOG_LEVEL: 'silent', DATA_DIR: folder, ...settings }), {
    refuseUnderPressure: false,
    ...options,
  });
  onTestFinished(async () => {
    await app.close();
    if (settings.DATA_DIR === undefined) await rm(folder, { recursive: true, force: true });
  });
  return app;
}

/** A group's app with the records that the contract's examples find, and headers that say that its keeper asks. */
export async function buildForExamples() {
  const { options, settings, headers, reset, dispose } = await openExampleRecords();
  onTestFinished(dispose);
  return { app: await build(settings, options), headers, reset };
}
