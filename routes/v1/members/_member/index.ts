import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { actorOf } from '../../../../src/members/audit.ts';
import {
  lastAdmin,
  noMember,
  requireGroup,
  requireSelfOrAdmin,
  tooMany,
} from '../../../../src/members/member-problems.ts';
import { memberParameter, memberReply, memberWish } from '../../../../src/members/replies.ts';
import { showMember } from '../../../../src/members/show.ts';
import { noQuery } from '../../../../src/no-query.ts';
import { bodyErrorReplies, errorReplies } from '../../../../src/problem/error-replies.ts';

export default (async (app) => {
  const routes = app.withTypeProvider<ZodTypeProvider>();

  routes.get(
    '/',
    {
      preHandler: requireGroup,
      schema: {
        operationId: 'readMember',
        tags: ['members'],
        summary: 'One member: oneself or, for those who keep the group, anybody',
        params: memberParameter,
        querystring: noQuery,
        response: { 200: memberReply, ...errorReplies(400, 401, 403, 404) },
      },
    },
    async ({ params, caller }) => {
      requireSelfOrAdmin(caller, params.member);
      const member = await app.members.read(params.member);
      if (!member) throw noMember(params.member);
      return showMember(member);
    },
  );

  routes.put(
    '/',
    {
      config: { needs: 'admin' },
      preHandler: requireGroup,
      schema: {
        operationId: 'putMember',
        tags: ['members'],
        summary: 'Add a member, or suspend or resume one',
        description:
          'A new member has no token yet: make one with `POST /v1/members/{member}/tokens`. The same request twice is the same as once.',
        params: memberParameter,
        querystring: noQuery,
        body: memberWish,
        response: {
          200: memberReply,
          201: memberReply.meta({ description: 'The member is new.' }),
          ...bodyErrorReplies(401, 403, 404, 409),
        },
      },
    },
    async ({ params, body, caller }, reply) => {
      const put = await app.members.put(actorOf(caller), params.member, body);
      if (put === 'last-admin') throw lastAdmin();
      if (put === 'full') throw tooMany('members', 'remove members who are no longer there');
      if (put.outcome === 'added')
        reply.code(201).header('location', `/v1/members/${encodeURIComponent(params.member)}`);
      return showMember(put.member);
    },
  );

  routes.delete(
    '/',
    {
      config: { needs: 'admin' },
      preHandler: requireGroup,
      schema: {
        operationId: 'removeMember',
        tags: ['members'],
        summary: 'Remove a member with everything that the member keeps',
        description:
          'Things with all their versions, share links, tokens and sessions are gone for good. `PUT` with `active` false keeps them.',
        params: memberParameter,
        querystring: noQuery,
        response: {
          204: z.undefined().meta({ description: 'The member is gone.' }),
          ...errorReplies(400, 401, 403, 404, 409),
        },
      },
    },
    async ({ params, caller }, reply) => {
      const outcome = await app.members.remove(actorOf(caller), params.member);
      if (outcome === 'last-admin') throw lastAdmin();
      if (outcome === 'absent') throw noMember(params.member);
      return reply.code(204).send();
    },
  );
}) satisfies FastifyPluginAsync;
