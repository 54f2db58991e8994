import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { stripSpec } from '../../../../shared/calibration/strip-spec.ts';
import { svgOfStrip } from '../../../../src/folders/svg-of-strip.ts';
import { noQuery } from '../../../../src/no-query.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';
import { svgMediaType } from '../../../../src/svg/media-type.ts';
import { svgReply } from '../../../../src/svg/svg-reply.ts';

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: app.replaceStoredNames,
      schema: {
        operationId: 'drawCalibrationStrip',
        tags: ['calibration'],
        summary: 'A strip that shows what a fold takes from a panel',
        description:
          'Cut it, fold it to and fro along every score, press it, measure each panel from edge to edge and add up; `POST /v1/calibration/factor` makes the fold factor of it.',
        querystring: noQuery,
        body: stripSpec,
        response: { 200: svgReply('The strip as layered SVG.'), ...bodyErrorReplies(412) },
      },
    },
    async (request, reply) => reply.type(svgMediaType).send(svgOfStrip(request.body)),
  );
}) satisfies FastifyPluginAsync;
