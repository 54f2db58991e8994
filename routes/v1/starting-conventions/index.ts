import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { startingConventions } from '../../../shared/kept/starting-conventions.ts';
import { noQuery } from '../../../src/no-query.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';

const reply = z.strictObject({
  conventions: z.array(
    z
      .strictObject({
        name: z.string().meta({ description: 'What a spec’s `convention` may say.' }),
        description: z.string(),
        convention: z.record(z.string(), z.unknown()).meta({ description: 'As a spec may hold it.' }),
      })
      .meta({ id: 'StartingConvention' }),
  ),
});

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing' },
      schema: {
        operationId: 'listStartingConventions',
        tags: ['catalogue'],
        summary: 'Conventions to begin with, named by what they do',
        querystring: noQuery,
        response: { 200: reply, ...errorReplies(400) },
      },
    },
    async () => ({ conventions: startingConventions.map((each) => ({ ...each })) }),
  );
}) satisfies FastifyPluginAsync;
