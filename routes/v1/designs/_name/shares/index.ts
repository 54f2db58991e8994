import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { storedName } from '../../../../../shared/spec/stored-name.ts';
import { noQuery } from '../../../../../src/no-query.ts';
import { bodyErrorReplies, errorReplies } from '../../../../../src/problem/error-replies.ts';
import { HttpProblem } from '../../../../../src/problem/http-problem.ts';
import { notKept } from '../../../../../src/resources/kept-problems.ts';
import { newShare, shareList, shareRequest } from '../../../../../src/resources/share-reply.ts';

const params = z.strictObject({ name: storedName });

export default (async (app) => {
  const routes = app.withTypeProvider<ZodTypeProvider>();

  routes.get(
    '/',
    {
      schema: {
        operationId: 'listSharesOfDesign',
        tags: ['kept'],
        summary: 'The links to a design, oldest first',
        params,
        querystring: noQuery,
        response: { 200: shareList, ...errorReplies(400, 401, 403, 404) },
      },
    },
    async ({ params: { name }, caller }) => {
      const items = await app.store.shares(caller.owner, name);
      if (items.length === 0 && !(await app.store.read(caller.owner, 'designs', name)))
        throw notKept('designs', name);
      return { items: items.map((each) => ({ ...each })) };
    },
  );

  routes.post(
    '/',
    {
      config: { needs: 'write' },
      schema: {
        operationId: 'shareDesign',
        tags: ['kept'],
        summary: 'Make a link with which anybody can read a design',
        description:
          'It shows the current version, its plan, its pictures and its SVG in the reader’s own convention; nothing can be changed with it, and it can be revoked. While its owner is suspended it gives nothing.',
        params,
        querystring: noQuery,
        body: shareRequest,
        response: { 201: newShare, ...bodyErrorReplies(401, 403, 404, 409) },
      },
    },
    async ({ params: { name }, body: { expires }, caller }, reply) => {
      const now = app.clock();
      if (expires !== undefined && Date.parse(expires) <= now.getTime())
        throw new HttpProblem(400, 'The link would have expired before it was made.', [
          {
            path: '/expires',
            message: 'the time has passed',
            remedy: 'give a time to come, or leave it out',
          },
        ]);
      const share = await app.store.share(caller.owner, name, { expires });
      if (share === 'absent') throw notKept('designs', name);
      if (share === 'full')
        throw new HttpProblem(409, 'This design has as many links as the service allows.', [
          { path: '', message: 'no link was made', remedy: 'revoke one that is no longer needed' },
        ]);
      const made = (await app.store.shares(caller.owner, name)).find(({ id }) => id === share.id);
      return reply.code(201).send({
        created: now.toISOString(),
        ...made,
        ...share,
        href: `/v1/shared/${share.secret}`,
      });
    },
  );
}) satisfies FastifyPluginAsync;
