import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { errorReplies } from '../problem/error-replies.ts';
import type { Kind } from '../store/store.ts';
import { keptKinds } from './kept-kinds.ts';
import { keptList, showEntry } from './kept-reply.ts';
import { namePage } from './paging.ts';

/** The route that lists a kind of kept things. */
export const listKept =
  (kind: Kind): FastifyPluginAsync =>
  async (app) => {
    app.withTypeProvider<ZodTypeProvider>().get(
      '/',
      {
        schema: {
          operationId: `list${keptKinds[kind].ids}`,
          tags: ['kept'],
          summary: `Every ${keptKinds[kind].noun} that you keep, by name`,
          querystring: namePage,
          response: { 200: keptList, ...errorReplies(400, 401, 403) },
        },
      },
      async ({ query: { after, limit }, caller }) => {
        const { items, next } = await app.store.list(caller.owner, kind, {
          limit,
          after,
        });
        return { items: items.map(showEntry), next };
      },
    );
  };
