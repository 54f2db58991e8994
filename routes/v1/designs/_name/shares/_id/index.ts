import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { storedName } from '../../../../../../shared/spec/stored-name.ts';
import { noQuery } from '../../../../../../src/no-query.ts';
import { errorReplies } from '../../../../../../src/problem/error-replies.ts';
import { HttpProblem } from '../../../../../../src/problem/http-problem.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().delete(
    '/',
    {
      config: { needs: 'write' },
      schema: {
        operationId: 'revokeShareOfDesign',
        tags: ['kept'],
        summary: 'Revoke a link to a design',
        params: z.strictObject({ name: storedName, id: z.string().regex(/^[\w-]{1,40}$/u) }),
        querystring: noQuery,
        response: {
          204: z.undefined().meta({ description: 'It gives nothing any more.' }),
          ...errorReplies(400, 401, 403, 404),
        },
      },
    },
    async ({ params: { name, id }, caller }, reply) => {
      if (await app.store.unshare(caller.owner, name, id)) return reply.code(204).send();
      throw new HttpProblem(404, `No design of yours called ${JSON.stringify(name)} has such a link.`, [
        { path: '/id', message: 'there is no such link', remedy: 'GET /v1/designs/{name}/shares lists them' },
      ]);
    },
  );
}) satisfies FastifyPluginAsync;
