import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { showFoldFactor } from '../../../../shared/calibration/show-fold-factor.ts';
import { foldFactorReply, stripMeasurement } from '../../../../shared/calibration/strip-spec.ts';
import { noQuery } from '../../../../src/no-query.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      schema: {
        operationId: 'measureFoldFactor',
        tags: ['calibration'],
        summary: 'The fold factor of a measured strip',
        querystring: noQuery,
        body: stripMeasurement,
        response: { 200: foldFactorReply, ...bodyErrorReplies(412) },
      },
    },
    async (request) => showFoldFactor(request.body),
  );
}) satisfies FastifyPluginAsync;
