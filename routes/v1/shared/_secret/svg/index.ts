import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import type { Convention } from '../../../../../shared/drawing/convention.ts';
import { keptConvention } from '../../../../../shared/kept/kept-convention.ts';
import { namedOr, storedName } from '../../../../../shared/spec/stored-name.ts';
import { fontsFor } from '../../../../../src/folders/fonts-for.ts';
import { svgOfFolder } from '../../../../../src/folders/svg-of-folder.ts';
import { noQuery } from '../../../../../src/no-query.ts';
import { bodyErrorReplies, errorReplies } from '../../../../../src/problem/error-replies.ts';
import { readWith } from '../../../../../src/problem/read-with.ts';
import { replaceNames } from '../../../../../src/resources/replace-names.ts';
import { secretParameter, sharedDesign, specOfShared } from '../../../../../src/resources/shared-design.ts';
import { svgMediaType } from '../../../../../src/svg/media-type.ts';
import { svgReply } from '../../../../../src/svg/svg-reply.ts';

/** The reader's own convention, by name or as it is. */
const inConvention = z.strictObject({
  convention: namedOr(keptConvention, 'convention', '/v1/conventions'),
});

const drawn = () => svgReply('The layered SVG.');

export default (async (app) => {
  const routes = app.withTypeProvider<ZodTypeProvider>();

  const draw = async (secret: string, own?: Convention) => {
    const spec = specOfShared(await sharedDesign(app.store, app.clock, secret));
    return svgOfFolder(own === undefined ? spec : { ...spec, convention: own }, await fontsFor(spec));
  };

  routes.get(
    '/',
    {
      config: { needs: 'nothing' },
      schema: {
        operationId: 'drawSharedDesign',
        tags: ['shared'],
        summary: 'The layered SVG of the design behind a link',
        params: secretParameter,
        querystring: z.strictObject({
          convention: storedName.optional().meta({
            description: 'The name of a convention of yours, or of a starting one; default the design’s own.',
          }),
        }),
        response: { 200: drawn(), ...errorReplies(400, 404, 409, 422) },
      },
    },
    async (request, reply) => {
      const { params, query } = request;
      const own =
        query.convention === undefined
          ? undefined
          : readWith(inConvention, await replaceNames(query, app.findKept(request))).convention;
      return reply.type(svgMediaType).send(await draw(params.secret, own));
    },
  );

  routes.post(
    '/',
    {
      config: { needs: 'nothing' },
      preValidation: app.replaceStoredNames,
      schema: {
        operationId: 'drawSharedDesignAs',
        tags: ['shared'],
        summary: 'The layered SVG of the design behind a link, in a convention of your own',
        params: secretParameter,
        querystring: noQuery,
        body: inConvention,
        response: { 200: drawn(), ...bodyErrorReplies(404, 409, 412, 422) },
      },
    },
    async ({ params: { secret }, body: { convention } }, reply) =>
      reply.type(svgMediaType).send(await draw(secret, convention)),
  );
}) satisfies FastifyPluginAsync;
