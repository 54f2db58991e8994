import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { scopes } from '../../../src/members/caller.ts';
import { meReply } from '../../../src/members/replies.ts';
import { noQuery } from '../../../src/no-query.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      schema: {
        operationId: 'readMe',
        tags: ['members'],
        summary: 'Who asks, and what this caller may do',
        querystring: noQuery,
        response: { 200: meReply, ...errorReplies(400, 401, 403) },
      },
    },
    async ({ caller: { name, scopes: own, proof } }) => ({
      mode: app.config.group ? ('group' as const) : ('home' as const),
      name,
      scopes: scopes.filter((scope) => own.has(scope)),
      ...(proof === undefined ? {} : { signedInBy: proof.by }),
      ...(proof?.expires === undefined ? {} : { expires: proof.expires }),
    }),
  );
}) satisfies FastifyPluginAsync;
