import type { FastifyInstance } from 'fastify';
import { onTestFinished } from 'vitest';
import { type AppOptions, buildApp } from '../../src/app.ts';
import { readConfig } from '../../src/config.ts';

/**
 * A ready app that closes when its test ends. It logs nothing, and does not refuse work under pressure, since a
 * test may load its own process.
 * @param settings environment variables
 */
export async function build(
  settings: Readonly<Record<string, string>> = {},
  options: AppOptions = {},
): Promise<FastifyInstance> {
  const app = await buildApp(readConfig({ LOG_LEVEL: 'silent', ...settings }), {
    refuseUnderPressure: false,
    ...options,
  });
  onTestFinished(async () => {
    await app.close();
  });
  return app;
}
