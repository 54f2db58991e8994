import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { styles } from '../../../shared/styles/registry.ts';
import { showStyle, stylesReply } from '../../../shared/styles/styles-reply.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      schema: {
        operationId: 'listStyles',
        tags: ['catalogue'],
        summary: 'Ways of folding',
        response: { 200: stylesReply, ...errorReplies() },
      },
    },
    async () => ({ styles: styles.map(showStyle) }),
  );
}) satisfies FastifyPluginAsync;
