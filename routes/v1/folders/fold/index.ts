import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { foldDocument } from '../../../../shared/fold-format/fold-document.ts';
import { folderSpec } from '../../../../shared/spec/folder-spec.ts';
import { foldOfFolder } from '../../../../src/folders/fold-of-folder.ts';
import { fontsFor } from '../../../../src/folders/fonts-for.ts';
import { noQuery } from '../../../../src/no-query.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: app.replaceStoredNames,
      schema: {
        operationId: 'foldFolder',
        tags: ['folders'],
        summary: 'The crease pattern and folded forms of a folder, as FOLD 1.2',
        description:
          'For programs that show or check folding. The key frame is the crease pattern with the inside face up; further frames are the flat form with its layer order, the closed form in 3D, and the form after each step.',
        querystring: noQuery,
        body: folderSpec,
        response: { 200: foldDocument, ...bodyErrorReplies(412, 422) },
      },
    },
    async (request) => foldOfFolder(request.body, await fontsFor(request.body)),
  );
}) satisfies FastifyPluginAsync;
