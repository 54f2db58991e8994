import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { healthReply } from '../../src/health-reply.ts';
import { errorReplies } from '../../src/problem/error-replies.ts';

/** Ready: the process answers and is not overloaded, else the pressure plugin has answered 503 already. */
export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { rateLimit: false },
      schema: {
        operationId: 'getHealth',
        tags: ['service'],
        summary: 'Whether the service can take work',
        response: { 200: healthReply, ...errorReplies() },
      },
    },
    async () => ({ status: 'ok' as const }),
  );
}) satisfies FastifyPluginAsync;
