import underPressure from '@fastify/under-pressure';
import fp from 'fastify-plugin';
import type { PluginOptions } from '../app.ts';
import { HttpProblem } from '../problem/http-problem.ts';

/** Loading the program keeps it busy, which is no pressure; so delays count only some time after the start. */
const graceMs = 5_000;

const retryAfterSeconds = 5;

/**
 * Answers 503 with Retry-After while the process is overloaded, so that it stays able to recover.
 * @see https://github.com/fastify/under-pressure
 */
export default fp<PluginOptions>(
  async (app, { refuseUnderPressure, mostHeapBytes }) => {
    if (!refuseUnderPressure) return;
    let startedMs = performance.now();
    app.addHook('onListen', async () => {
      startedMs = performance.now();
    });
    await app.register(underPressure, {
      maxEventLoopDelay: 1_000, // ms, mean over a second: far beyond any single plan
      maxHeapUsedBytes: mostHeapBytes,
      pressureHandler: async (_request, _reply, type) => {
        if (type === underPressure.TYPE_EVENT_LOOP_DELAY && performance.now() - startedMs < graceMs) return;
        throw new HttpProblem(503, 'The service is too busy just now; ask again later.', [], {
          'retry-after': String(retryAfterSeconds),
        });
      },
    });
  },
  { name: 'pressure' },
);
