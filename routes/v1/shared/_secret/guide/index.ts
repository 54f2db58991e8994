import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { guideQuery } from '../../../../../shared/guide/guide-query.ts';
import { guideReply } from '../../../../../src/guide/guide-reply.ts';
import { errorReplies } from '../../../../../src/problem/error-replies.ts';
import { secretParameter, sharedDesign, specOfShared } from '../../../../../src/resources/shared-design.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing' },
      schema: {
        operationId: 'guideSharedDesign',
        tags: ['shared'],
        summary: 'The maker’s sheet of the design behind a link',
        params: secretParameter,
        querystring: guideQuery,
        response: { 200: guideReply, ...errorReplies(400, 404, 409, 422) },
      },
    },
    async ({ params: { secret }, query }, reply) => {
      const { guideOfFolder } = await import('../../../../../src/guide/guide-of-folder.ts');
      const { sendGuide } = await import('../../../../../src/guide/send-guide.ts');
      const design = await sharedDesign(app.store, app.clock, secret);
      return sendGuide(reply, await guideOfFolder(specOfShared(design), query, app.clock(), design));
    },
  );
}) satisfies FastifyPluginAsync;
