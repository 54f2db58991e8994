import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { actorOf } from '../../../../../src/members/audit.ts';
import {
  noMember,
  requireGroup,
  requireSelfOrAdmin,
  tooMany,
} from '../../../../../src/members/member-problems.ts';
import {
  memberParameter,
  newTokenReply,
  tokenList,
  tokenParameters,
  tokenWish,
} from '../../../../../src/members/replies.ts';
import { showNewToken, showToken } from '../../../../../src/members/show.ts';
import { tokenWithin } from '../../../../../src/members/token-within.ts';
import { noQuery } from '../../../../../src/no-query.ts';
import { bodyErrorReplies, errorReplies } from '../../../../../src/problem/error-replies.ts';
import { limitParameter } from '../../../../../src/resources/paging.ts';

const page = z.strictObject({
  after: tokenParameters.shape.id
    .optional()
    .meta({ description: 'Begins after this token: `next` of the page before.' }),
  limit: limitParameter,
});

export default (async (app) => {
  const routes = app.withTypeProvider<ZodTypeProvider>();

  routes.get(
    '/',
    {
      preHandler: requireGroup,
      schema: {
        operationId: 'listTokens',
        tags: ['members'],
        summary: 'The tokens of a member, oldest first',
        description: 'One’s own or, for those who keep the group, anybody’s; never their secrets.',
        params: memberParameter,
        querystring: page,
        response: { 200: tokenList, ...errorReplies(400, 401, 403, 404) },
      },
    },
    async ({ params, query: { after, limit }, caller }) => {
      requireSelfOrAdmin(caller, params.member);
      const part = await app.members.tokens(params.member, {
        limit,
        after,
      });
      if (!part) throw noMember(params.member);
      return {
        items: part.items.map((token) => showToken(token, caller)),
        next: part.next,
      };
    },
  );

  routes.post(
    '/',
    {
      config: { needs: 'write' },
      preHandler: requireGroup,
      schema: {
        operationId: 'makeToken',
        tags: ['members'],
        summary: 'Make a token for oneself or, for those who keep the group, for anybody',
        description:
          'The reply is the only place where the token is ever shown. A token makes none that outlasts it and, without the scope `admin`, none that may do more.',
        params: memberParameter,
        querystring: noQuery,
        body: tokenWish,
        response: {
          201: newTokenReply,
          ...bodyErrorReplies(401, 403, 404, 409),
        },
      },
    },
    async ({ params: { member }, body, caller }, reply) => {
      requireSelfOrAdmin(caller, member);
      const wish = tokenWithin(caller, body, app.clock());
      const made = await app.members.makeToken(actorOf(caller), member, wish);
      if (made === 'absent') throw noMember(member);
      if (made === 'full') throw tooMany('tokens', 'revoke tokens that are no longer used');
      return reply
        .code(201)
        .header('location', `/v1/members/${encodeURIComponent(member)}/tokens/${made.id}`)
        .header('cache-control', 'no-store')
        .send(showNewToken(made));
    },
  );
}) satisfies FastifyPluginAsync;
