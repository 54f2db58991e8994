import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { sizes } from '../../../shared/sizes/catalogue.ts';
import { showSize, sizesReply } from '../../../shared/sizes/size-schema.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      schema: {
        operationId: 'listSizes',
        tags: ['catalogue'],
        summary: 'Published sizes of cards, envelopes and sheets',
        response: { 200: sizesReply, ...errorReplies() },
      },
    },
    async () => ({ sizes: sizes.map(showSize) }),
  );
}) satisfies FastifyPluginAsync;
