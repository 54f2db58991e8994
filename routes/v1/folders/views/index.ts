import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { folderSpec } from '../../../../shared/spec/folder-spec.ts';
import { viewsQuery } from '../../../../shared/views/view-name.ts';
import { fontsFor } from '../../../../src/folders/fonts-for.ts';
import { viewsOfFolder } from '../../../../src/folders/views-of-folder.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';
import { svgMediaType } from '../../../../src/svg/media-type.ts';

const viewsReply = {
  description: 'A picture for people, with text; not to be cut.',
  content: { [svgMediaType]: { schema: z.string() } },
};

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: app.replaceStoredNames,
      schema: {
        operationId: 'viewFolder',
        tags: ['folders'],
        summary: 'The finished folder as it will look, and how it is folded',
        description:
          'Pictures in millimetres. The two faces of the sheet differ in tone and pattern, arrows show where each print’s up points, and the title and the description say the same in words.',
        querystring: viewsQuery,
        body: folderSpec,
        response: { 200: viewsReply, ...bodyErrorReplies(404, 412, 422) },
      },
    },
    async ({ body, query }, reply) =>
      reply.type(svgMediaType).send(viewsOfFolder(body, query.view, await fontsFor(body))),
  );
}) satisfies FastifyPluginAsync;
