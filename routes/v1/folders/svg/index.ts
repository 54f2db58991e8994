import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { folderSpec } from '../../../../shared/spec/folder-spec.ts';
import { fontsFor } from '../../../../src/folders/fonts-for.ts';
import { svgOfFolder } from '../../../../src/folders/svg-of-folder.ts';
import { svgOfPiece } from '../../../../src/folders/svg-of-piece.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';
import { rememberReplies } from '../../../../src/replies/remember-replies.ts';
import { svgMediaType } from '../../../../src/svg/media-type.ts';
import { svgReply } from '../../../../src/svg/svg-reply.ts';

const pieceQuery = z.strictObject({
  piece: z
    .string()
    .max(40)
    .optional()
    .meta({
      description:
        'A piece to cut from another paper, such as `inlay-1`, as a plan lists them; default the folder itself.',
      examples: ['inlay-1'],
    }),
});

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
          'Real size, groups `score` (holding `score-valley` and `score-mountain`), `knockout` and `cut` in that order; where the convention asks for it, `guide` shows what is glued and is never cut. Measure a first piece before you cut a good sheet, and follow the instructions of the machine and of the material.',
        querystring: pieceQuery,
        body: folderSpec,
        response: {
          200: svgReply('The layered SVG, in the spec’s convention.'),
          ...bodyErrorReplies(404, 412, 422),
        },
      },
    },
    async (request, reply) => {
      const { body, query } = request;
      const fonts = await fontsFor(body);
      const svg = query.piece === undefined ? svgOfFolder(body, fonts) : svgOfPiece(body, query.piece, fonts);
      return replies.reply(request, reply, svg);
    },
  );
}) satisfies FastifyPluginAsync;
