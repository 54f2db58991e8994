import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { healthReply } from '../../src/health-reply.ts';
import { errorReplies } from '../../src/problem/error-replies.ts';
import { readiness } from '../../src/readiness.ts';

/** Ready: not overloaded, which the pressure plugin has answered with 503 already, and the store is there. */
export default (async (app) => {
  const ready = readiness(app.store);
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing', rateLimit: false },
      schema: {
        operationId: 'getHealth',
        tags: ['service'],
        summary: 'Whether the service can take work',
        response: { 200: healthReply, ...errorReplies() },
      },
    },
    async () => {
      await ready();
      return { status: 'ok' as const };
    },
  );
}) satisfies FastifyPluginAsync;
