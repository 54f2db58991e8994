import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { folderSpec } from '../../../../shared/spec/folder-spec.ts';
import { svgOfFolder } from '../../../../src/folders/svg-of-folder.ts';
import { noQuery } from '../../../../src/no-query.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';
import { rememberReplies } from '../../../../src/replies/remember-replies.ts';
import { svgMediaType } from '../../../../src/svg/media-type.ts';
import { svgReply } from '../../../../src/svg/svg-reply.ts';

export default (async (app) => {
  const replies = rememberReplies(svgMediaType);
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: [app.replaceStoredNames, replies.recall],
      schema: {
        operationId: 'drawFolder',
        tags: ['folders'],
        summary: 'The layered SVG of a folder, for a cutting machine',
        description:
          'Real size, groups `score` (holding `score-valley` and `score-mountain`), `knockout` and `cut` in that order. Measure a first piece before you cut a good sheet, and follow the instructions of the machine and of the material.',
        querystring: noQuery,
        body: folderSpec,
        response: {
          200: svgReply('The layered SVG, in the spec’s convention.'),
          ...bodyErrorReplies(412, 422),
        },
      },
    },
    async (request, reply) => replies.reply(request, reply, svgOfFolder(request.body)),
  );
}) satisfies FastifyPluginAsync;
