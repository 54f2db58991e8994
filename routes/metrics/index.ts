import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { metricsMediaType } from '../../src/metrics/service-metrics.ts';
import { noQuery } from '../../src/no-query.ts';
import { errorReplies } from '../../src/problem/error-replies.ts';

/** Answers under pressure too, which is when somebody wants to see it. */
export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'read', pressureHandler: () => undefined },
      schema: {
        operationId: 'getMetrics',
        tags: ['service'],
        summary: 'What the service counts, for Prometheus',
        description:
          'Numbers of the whole service: no names, nothing that anybody sent. In a group any member may read them.',
        querystring: noQuery,
        response: {
          200: {
            description: 'Prometheus text format, version 0.0.4.',
            content: { 'text/plain': { schema: z.string() } },
          },
          ...errorReplies(),
        },
      },
    },
    async (_request, reply) => {
      reply.type(metricsMediaType).header('cache-control', 'no-store');
      return app.metrics.text();
    },
  );
}) satisfies FastifyPluginAsync;
