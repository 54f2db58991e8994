import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { storedName } from '../../../../../../shared/spec/stored-name.ts';
import { noQuery } from '../../../../../../src/no-query.ts';
import { errorReplies } from '../../../../../../src/problem/error-replies.ts';
import { HttpProblem } from '../../../../../../src/problem/http-problem.ts';
import { sendKept } from '../../../../../../src/resources/send-kept.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      schema: {
        operationId: 'readVersionOfDesign',
        tags: ['kept'],
        summary: 'A design as it once was',
        params: z.strictObject({
          name: storedName,
          version: z.coerce
            .number()
            .int()
            .min(1)
            .max(2 ** 31 - 1),
        }),
        querystring: noQuery,
        response: {
          200: z.unknown().meta({ description: 'As it was put.' }),
          ...errorReplies(400, 401, 403, 404),
        },
      },
    },
    async ({ params: { name, version }, caller }, reply) => {
      const stored = await app.store.read(caller.owner, 'designs', name, version);
      if (stored) return sendKept(reply, stored);
      throw new HttpProblem(
        404,
        `You keep no version ${version} of a design called ${JSON.stringify(name)}.`,
        [
          {
            path: '/version',
            message: 'there is no such version',
            remedy: 'GET /v1/designs/{name}/versions lists them',
          },
        ],
      );
    },
  );
}) satisfies FastifyPluginAsync;
