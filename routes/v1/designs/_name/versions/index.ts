import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { storedName } from '../../../../../shared/spec/stored-name.ts';
import { errorReplies } from '../../../../../src/problem/error-replies.ts';
import { notKept } from '../../../../../src/resources/kept-problems.ts';
import { limitParameter } from '../../../../../src/resources/paging.ts';

const reply = z.strictObject({
  items: z.array(
    z.strictObject({
      version: z.int().min(1),
      changed: z.string().meta({ description: 'When it was kept.', format: 'date-time' }),
    }),
  ),
  next: z.int().optional().meta({
    description: 'Send it as `before` for the following page; absent on the last one.',
  }),
});

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      schema: {
        operationId: 'listVersionsOfDesign',
        tags: ['kept'],
        summary: 'Every version of a design, newest first',
        description: 'None is lost until the design is removed.',
        params: z.strictObject({ name: storedName }),
        querystring: z.strictObject({
          before: z.coerce
            .number()
            .int()
            .min(1)
            .max(2 ** 31 - 1)
            .optional()
            .meta({
              description: 'Only versions before this one: `next` of the page before.',
            }),
          limit: limitParameter,
        }),
        response: { 200: reply, ...errorReplies(400, 401, 403, 404) },
      },
    },
    async ({ params: { name }, query: { before, limit }, caller }) => {
      const { items, next } = await app.store.versions(caller.owner, name, {
        limit,
        before,
      });
      if (items.length === 0 && before === undefined) throw notKept('designs', name);
      return { items: items.map((each) => ({ ...each })), next };
    },
  );
}) satisfies FastifyPluginAsync;
