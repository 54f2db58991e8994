import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { planReply } from '../../../../../shared/plan-reply/plan-reply.ts';
import { fontsFor } from '../../../../../src/folders/fonts-for.ts';
import { planFolder } from '../../../../../src/folders/plan-folder.ts';
import { noQuery } from '../../../../../src/no-query.ts';
import { errorReplies } from '../../../../../src/problem/error-replies.ts';
import { secretParameter, sharedDesign, specOfShared } from '../../../../../src/resources/shared-design.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'nothing' },
      schema: {
        operationId: 'planSharedDesign',
        tags: ['shared'],
        summary: 'The plan of the design behind a link',
        params: secretParameter,
        querystring: noQuery,
        response: { 200: planReply, ...errorReplies(400, 404, 409, 422) },
      },
    },
    async ({ params: { secret } }) => {
      const spec = specOfShared(await sharedDesign(app.store, app.clock, secret));
      return planFolder(spec, await fontsFor(spec));
    },
  );
}) satisfies FastifyPluginAsync;
