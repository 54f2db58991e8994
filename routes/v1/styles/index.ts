import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { styles } from '../../../shared/styles/registry.ts';
import { showStyle, stylesReply } from '../../../shared/styles/styles-reply.ts';
import { noQuery } from '../../../src/no-query.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing' },
      schema: {
        operationId: 'listStyles',
        tags: ['catalogue'],
        summary: 'Ways of folding',
        querystring: noQuery,
        response: { 200: stylesReply, ...errorReplies(400) },
      },
    },
    async () => ({ styles: styles.map(showStyle) }),
  );
}) satisfies FastifyPluginAsync;
