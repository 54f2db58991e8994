import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { labelsQuery } from '../../../../shared/labels/labels-query.ts';
import { setSpec } from '../../../../shared/sets/set-spec.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';
import { sendFile } from '../../../../src/replies/send-file.ts';
import { givenUp } from '../../../../src/sets/given-up.ts';
import { setNames } from '../../../../src/sets/set-names.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: setNames(app),
      schema: {
        operationId: 'labelSet',
        tags: ['sets'],
        summary: 'Labels for every kit of a class, and a card to make each folder by, to print',
        description:
          'A numbered label for each kit says what is in it. A card for each folder of each kit has its blank, every score from one home edge in both systems, its folds in order, and what it holds. Nothing is placed on papers for this.',
        querystring: labelsQuery,
        body: setSpec,
        response: {
          200: {
            description: 'The labels, then the cards, with lines to cut along.',
            content: {
              'application/pdf': { schema: z.string().meta({ description: 'Tagged, fonts embedded.' }) },
            },
          },
          ...bodyErrorReplies(401, 403, 412, 422),
        },
      },
    },
    async (request, reply) => {
      // its writer is large, and few requests need it
      const { labelsOfSet } = await import('../../../../src/labels/labels-of-set.ts');
      const labels = await labelsOfSet(request.body, request.query, app.clock(), givenUp(reply));
      return sendFile(reply, 'application/pdf', 'labels.pdf', labels);
    },
  );
}) satisfies FastifyPluginAsync;
