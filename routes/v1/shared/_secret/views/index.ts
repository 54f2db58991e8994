import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { viewsQuery } from '../../../../../shared/views/view-name.ts';
import { fontsFor } from '../../../../../src/folders/fonts-for.ts';
import { viewsOfFolder } from '../../../../../src/folders/views-of-folder.ts';
import { errorReplies } from '../../../../../src/problem/error-replies.ts';
import { secretParameter, sharedDesign, specOfShared } from '../../../../../src/resources/shared-design.ts';
import { svgMediaType } from '../../../../../src/svg/media-type.ts';
import { svgReply } from '../../../../../src/svg/svg-reply.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing' },
      schema: {
        operationId: 'viewSharedDesign',
        tags: ['shared'],
        summary: 'Pictures of the design behind a link',
        params: secretParameter,
        querystring: viewsQuery,
        response: { 200: svgReply('The picture, for people.'), ...errorReplies(400, 404, 409, 422) },
      },
    },
    async ({ params: { secret }, query: { view } }, reply) => {
      const spec = specOfShared(await sharedDesign(app.store, app.clock, secret));
      return reply.type(svgMediaType).send(viewsOfFolder(spec, view, await fontsFor(spec)));
    },
  );
}) satisfies FastifyPluginAsync;
