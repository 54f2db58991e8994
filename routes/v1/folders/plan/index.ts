import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { planReply } from '../../../../shared/plan-reply/plan-reply.ts';
import { folderSpec } from '../../../../shared/spec/folder-spec.ts';
import { fontsFor } from '../../../../src/folders/fonts-for.ts';
import { planFolder } from '../../../../src/folders/plan-folder.ts';
import { noQuery } from '../../../../src/no-query.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';
import { spellOut } from '../../../../src/resources/spell-out.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: app.replaceStoredNames,
      schema: {
        operationId: 'planFolder',
        tags: ['folders'],
        summary: 'The solved dimensions of a folder, with their reasons',
        description:
          'Finds every dimension that the spec leaves open, says why each is what it is and how much slack each bound has, warns, and lists other ways that would also work.',
        querystring: noQuery,
        body: folderSpec,
        response: { 200: planReply, ...bodyErrorReplies(412, 422) },
      },
    },
    async (request) => {
      const plan = planFolder(request.body, await fontsFor(request.body));
      return { ...plan, alternatives: spellOut(plan.alternatives, request.spec) };
    },
  );
}) satisfies FastifyPluginAsync;
