import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { healthReply } from '../../../src/health-reply.ts';
import { problemMediaType, problemReply } from '../../../src/problem/problem.ts';

/** The only error there is: neither the rate limit nor pressure counts here. */
const malformed = {
  description: 'The request is not valid HTTP.',
  content: { [problemMediaType]: { schema: problemReply } },
};

/** Live: the process answers at all. It stays so under pressure, since a restart would lose the work in hand. */
export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing', rateLimit: false, pressureHandler: () => undefined },
      schema: {
        operationId: 'getLiveness',
        tags: ['service'],
        summary: 'Whether the service runs at all',
        response: { 200: healthReply, 400: malformed },
      },
    },
    async () => ({ status: 'ok' as const }),
  );
}) satisfies FastifyPluginAsync;
