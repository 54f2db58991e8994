import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { sizes } from '../../../shared/sizes/catalogue.ts';
import { showSize, sizesReply } from '../../../shared/sizes/size-schema.ts';
import { noQuery } from '../../../src/no-query.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing' },
      schema: {
        operationId: 'listSizes',
        tags: ['catalogue'],
        summary: 'Published sizes of cards, envelopes and sheets',
        querystring: noQuery,
        response: { 200: sizesReply, ...errorReplies(400) },
      },
    },
    async () => ({ sizes: sizes.map(showSize) }),
  );
}) satisfies FastifyPluginAsync;
