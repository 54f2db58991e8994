import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { onTestFinished } from 'vitest';
import { type AppOptions, buildApp } from '../../src/app.ts';
import { readConfig } from '../../src/config.ts';
import { exampleClock, openExampleStore } from '../../src/contract/example-store.ts';

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

/** The same with the store that the contract's examples find, and their clock. */
export async function buildForExamples(): Promise<{ app: FastifyInstance; reset: () => Promise<void> }> {
  const { store, reset, dispose } = await openExampleStore();
  onTestFinished(dispose);
  return { app: await build({}, { store, clock: exampleClock }), reset };
}
