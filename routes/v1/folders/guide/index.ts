import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { guideQuery } from '../../../../shared/guide/guide-query.ts';
import { folderSpec } from '../../../../shared/spec/folder-spec.ts';
import { guideReply } from '../../../../src/guide/guide-reply.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: app.replaceStoredNames,
      schema: {
        operationId: 'guideFolder',
        tags: ['folders'],
        summary: 'The maker’s sheet: everything to make a folder by, as a page or a PDF',
        description:
          'Finished sizes, what to cut, the open sheet with its parts, every score from one home edge in both systems with its rounding error, every fold with a picture, glue or slots, what comes from another paper, ribbon, cautions. A PDF may have the blank in real size over several pages.',
        querystring: guideQuery,
        body: folderSpec,
        response: { 200: guideReply, ...bodyErrorReplies(412, 422) },
      },
    },
    async (request, reply) => {
      // its writers are large, and few requests need them
      const { guideOfFolder } = await import('../../../../src/guide/guide-of-folder.ts');
      const { sendGuide } = await import('../../../../src/guide/send-guide.ts');
      return sendGuide(reply, await guideOfFolder(request.body, request.query, app.clock()));
    },
  );
}) satisfies FastifyPluginAsync;
