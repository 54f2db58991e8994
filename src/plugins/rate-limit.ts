import rateLimit from '@fastify/rate-limit';
import fp from 'fastify-plugin';
import type { PluginOptions } from '../app.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import { addressOf } from '../sign-in/identity.ts';

/**
 * Counts requests by member, or by address where nobody is signed in, and answers 429 beyond the limit; see
 * `RATE_LIMIT`. Each service counts for itself.
 * @see https://github.com/fastify/fastify-rate-limit
 */
export default fp<PluginOptions>(
  async (app, { config }) => {
    if (config.rateLimit === 0) return;
    await app.register(rateLimit, {
      max: config.rateLimit,
      timeWindow: '1 minute',
      keyGenerator: (request) =>
        request.caller?.proof ? `member ${request.caller.owner}` : `address ${addressOf(request)}`,
      errorResponseBuilder: (request, { max, after }) =>
        new HttpProblem(
          429,
          `At most ${max} requests a minute from one ${request.caller?.proof ? 'member' : 'address'}; ask again in ${after}.`,
        ),
    });
  },
  { name: 'rate-limit', dependencies: ['callers'] },
);
