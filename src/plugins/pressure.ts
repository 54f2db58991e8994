import { getHeapStatistics } from 'node:v8';
import underPressure from '@fastify/under-pressure';
import fp from 'fastify-plugin';
import type { PluginOptions } from '../app.ts';

/**
 * Answers 503 with Retry-After while the process is overloaded, so that it stays able to recover.
 * @see https://github.com/fastify/under-pressure
 */
export default fp<PluginOptions>(
  async (app, { refuseUnderPressure }) => {
    if (!refuseUnderPressure) return;
    await app.register(underPressure, {
      maxEventLoopDelay: 1_000, // ms, mean over a second: far beyond any single plan
      maxHeapUsedBytes: Math.floor(getHeapStatistics().heap_size_limit * 0.9),
      retryAfter: 5, // s
    });
  },
  { name: 'pressure' },
);
