import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { noQuery } from '../../../src/no-query.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';
import { problemKinds, problemNames } from '../../../src/problem/problem-kinds.ts';

const params = z.strictObject({
  name: z.enum(problemNames).meta({ description: 'The last part of a problem’s `type`.' }),
});

const explanation = z.string().meta({ description: 'What the problem means, and what to do about it.' });

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing' },
      schema: {
        operationId: 'explainProblem',
        tags: ['service'],
        summary: 'What a kind of problem means',
        params,
        querystring: noQuery,
        response: {
          200: { description: 'The explanation.', content: { 'text/plain': { schema: explanation } } },
          ...errorReplies(400),
        },
      },
    },
    async ({ params: { name } }, reply) => {
      const { title, status, explanation: text } = problemKinds[name];
      return reply.type('text/plain; charset=utf-8').send(`${title} (HTTP ${status})\n\n${text}\n`);
    },
  );
}) satisfies FastifyPluginAsync;
