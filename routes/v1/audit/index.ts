import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { auditList } from '../../../src/members/replies.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';
import { limitParameter } from '../../../src/resources/paging.ts';

const page = z.strictObject({
  before: z.coerce
    .number()
    .int()
    .min(1)
    .max(2 ** 31 - 1)
    .optional()
    .meta({ description: 'Only entries with lower numbers: `next` of the page before.' }),
  limit: limitParameter,
});

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'admin' },
      schema: {
        operationId: 'readAuditLog',
        tags: ['members'],
        summary: 'What was done to members, tokens and everything, newest first',
        description: 'Sign-ins are told for a year, everything else for good.',
        querystring: page,
        response: { 200: auditList, ...errorReplies(400, 401, 403) },
      },
    },
    async ({ query: { before, limit } }) => {
      const { items, next } = await app.members.audit({ limit, before });
      return { items: [...items], next };
    },
  );
}) satisfies FastifyPluginAsync;
