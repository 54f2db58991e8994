import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { setPlanReply } from '../../../../shared/sets/set-plan-reply.ts';
import type { SetProgress } from '../../../../shared/sets/set-progress.ts';
import { setSpec } from '../../../../shared/sets/set-spec.ts';
import { showSetPlan } from '../../../../shared/sets/show-set-plan.ts';
import { noQuery } from '../../../../src/no-query.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';
import { givenUp } from '../../../../src/sets/given-up.ts';
import { eventStreamType, sendEvents, wantsEvents } from '../../../../src/sets/plan-events.ts';
import { planSet } from '../../../../src/sets/plan-set.ts';
import { poolOf } from '../../../../src/sets/pool-of.ts';
import { setNames } from '../../../../src/sets/set-names.ts';

export default (async (app) => {
  const pool = poolOf(app);
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: setNames(app),
      schema: {
        operationId: 'planSet',
        tags: ['sets'],
        summary: 'What a set takes for a number of kits: sheets, ribbon, tape, cost, time',
        description:
          'Solves every folder of the set, counts pieces with spoilage, places them on the fewest sheets of your papers within the reach of the cutter, and lists what to buy. The number of sheets comes with a bound that no plan can beat. With `Accept: text/event-stream` it says how far it is while it works.',
        querystring: noQuery,
        body: setSpec,
        response: {
          200: {
            description: 'The plan.',
            content: {
              'application/json': { schema: setPlanReply },
              [eventStreamType]: {
                schema: z.string().meta({
                  description:
                    'Server-sent events: `progress` (SetProgress) about ten times a second, then `plan` (SetPlan), or `problem` (Problem); a comment line every 15 s, so that the connection stays open.',
                }),
              },
            },
          },
          ...bodyErrorReplies(401, 403, 412, 422),
        },
      },
    },
    async (request, reply) => {
      const signal = givenUp(reply);
      const plan = async (onProgress?: (progress: SetProgress) => void) =>
        showSetPlan(await planSet(request.body, pool, { signal, onProgress }));
      return wantsEvents(request.headers) ? sendEvents(reply, plan) : plan();
    },
  );
}) satisfies FastifyPluginAsync;
