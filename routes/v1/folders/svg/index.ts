import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { folderSpec } from '../../../../shared/spec/folder-spec.ts';
import { svgOfFolder } from '../../../../src/folders/svg-of-folder.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';
import { svgMediaType } from '../../../../src/svg/media-type.ts';

const svgReply = {
  description: 'The layered SVG, in the spec’s convention.',
  content: { [svgMediaType]: { schema: z.string() } },
};

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      schema: {
        operationId: 'drawFolder',
        tags: ['folders'],
        summary: 'The layered SVG of a folder, for a cutting machine',
        description:
          'Real size, groups `score` (holding `score-valley` and `score-mountain`), `knockout` and `cut` in that order. Measure a first piece before you cut a good sheet, and follow the instructions of the machine and of the material.',
        body: folderSpec,
        response: { 200: svgReply, ...bodyErrorReplies(412, 422) },
      },
    },
    async (request, reply) => reply.type(svgMediaType).send(svgOfFolder(request.body)),
  );
}) satisfies FastifyPluginAsync;
