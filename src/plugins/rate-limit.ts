import rateLimit from '@fastify/rate-limit';
import fp from 'fastify-plugin';
import type { PluginOptions } from '../app.ts';
import { HttpProblem } from '../problem/http-problem.ts';

/**
 * Counts requests by address and answers 429 beyond the limit; see `RATE_LIMIT`.
 * @see https://github.com/fastify/fastify-rate-limit
 */
export default fp<PluginOptions>(
  async (app, { config }) => {
    if (config.rateLimit === 0) return;
    await app.register(rateLimit, {
      max: config.rateLimit,
      timeWindow: '1 minute',
      errorResponseBuilder: (_request, { max, after }) =>
        new HttpProblem(429, `At most ${max} requests a minute from one address; ask again in ${after}.`),
    });
  },
  { name: 'rate-limit' },
);
