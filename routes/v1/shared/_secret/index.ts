import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { noQuery } from '../../../../src/no-query.ts';
import { errorReplies } from '../../../../src/problem/error-replies.ts';
import { secretParameter, sharedDesign, sharedDesignReply } from '../../../../src/resources/shared-design.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing' },
      schema: {
        operationId: 'readSharedDesign',
        tags: ['shared'],
        summary: 'The design behind a link',
        params: secretParameter,
        querystring: noQuery,
        response: { 200: sharedDesignReply, ...errorReplies(400, 404) },
      },
    },
    async ({ params: { secret } }) => sharedDesign(app.store, app.clock, secret),
  );
}) satisfies FastifyPluginAsync;
