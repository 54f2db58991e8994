import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { requireGroup } from '../../../src/members/member-problems.ts';
import { memberList } from '../../../src/members/replies.ts';
import { showMember } from '../../../src/members/show.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';
import { namePage } from '../../../src/resources/paging.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'admin' },
      preHandler: requireGroup,
      schema: {
        operationId: 'listMembers',
        tags: ['members'],
        summary: 'Every member of the group, by name',
        querystring: namePage,
        response: { 200: memberList, ...errorReplies(400, 401, 403, 404) },
      },
    },
    async ({ query: { after, limit } }) => {
      const { items, next } = await app.members.list({ limit, after });
      return { items: items.map(showMember), next };
    },
  );
}) satisfies FastifyPluginAsync;
