import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { actorOf } from '../../../../../../src/members/audit.ts';
import {
  lastAdmin,
  noToken,
  requireGroup,
  requireSelfOrAdmin,
} from '../../../../../../src/members/member-problems.ts';
import { tokenParameters } from '../../../../../../src/members/replies.ts';
import { noQuery } from '../../../../../../src/no-query.ts';
import { errorReplies } from '../../../../../../src/problem/error-replies.ts';
import { HttpProblem } from '../../../../../../src/problem/http-problem.ts';

const beyond = () =>
  new HttpProblem(403, 'Nothing was revoked, since that token may do more than the one at hand.', [
    {
      path: '/id',
      message: 'a token revokes only those whose scopes it has itself',
      remedy: 'use that token, or ask whoever keeps the group',
    },
  ]);

export default (async (app) => {
  app.withTypeProvider<ZodTypeProvider>().delete(
    '/',
    {
      config: { needs: 'write' },
      preHandler: requireGroup,
      schema: {
        operationId: 'revokeToken',
        tags: ['members'],
        summary: 'Revoke a token of oneself or, for those who keep the group, of anybody',
        description:
          'From then on it is refused, and so are the browsers that were signed in with it. The same request twice is the same as once.',
        params: tokenParameters,
        querystring: noQuery,
        response: {
          204: z.undefined().meta({ description: 'It is revoked.' }),
          ...errorReplies(400, 401, 403, 404, 409),
        },
      },
    },
    async ({ params: { member, id }, caller }, reply) => {
      requireSelfOrAdmin(caller, member);
      const within = caller.scopes.has('admin') ? {} : { within: caller.scopes };
      const outcome = await app.members.revoke(actorOf(caller), id, { member, ...within });
      if (outcome === 'absent') throw noToken(id);
      if (outcome === 'beyond') throw beyond();
      if (outcome === 'last-admin') throw lastAdmin();
      return reply.code(204).send();
    },
  );
}) satisfies FastifyPluginAsync;
