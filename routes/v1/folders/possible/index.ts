import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { possibleReply } from '../../../../shared/plan-reply/plan-reply.ts';
import { showPossible } from '../../../../shared/plan-reply/show-plan.ts';
import { possibleFrom } from '../../../../shared/solver/possible.ts';
import { sheetQuestion } from '../../../../shared/spec/folder-spec.ts';
import { noQuery } from '../../../../src/no-query.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: app.replaceStoredNames,
      schema: {
        operationId: 'possibleFolders',
        tags: ['folders'],
        summary: 'What a sheet can become',
        description:
          'Takes a folder spec without contents and dimensions, and lists every published card, with and without its envelope, that a folder from the sheet can hold.',
        querystring: noQuery,
        body: sheetQuestion,
        response: { 200: possibleReply, ...bodyErrorReplies(412) },
      },
    },
    async (request) => showPossible(possibleFrom(request.body)),
  );
}) satisfies FastifyPluginAsync;
