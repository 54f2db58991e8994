import type { FastifyPluginAsync, FastifyRequest } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { storedName } from '../../shared/spec/stored-name.ts';
import { noQuery } from '../no-query.ts';
import { bodyErrorReplies, errorReplies } from '../problem/error-replies.ts';
import type { Kind } from '../store/store.ts';
import { expectationOf } from './expectation-of.ts';
import { keptKinds } from './kept-kinds.ts';
import { changedMeanwhile, noMoreRoom, notKept } from './kept-problems.ts';
import { replaceNames } from './replace-names.ts';
import { sendKept } from './send-kept.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** The body as it was sent: what is kept, while the read one only proves that it can be. */
    asSent?: unknown;
  }
}

const named = z.strictObject({ name: storedName });

const preconditions = z.looseObject({
  'if-match': z.string().optional().meta({
    description:
      'The ETag of the version that you read: the change is made only if it is still the current one.',
  }),
  'if-none-match': z
    .string()
    .optional()
    .meta({ description: '`*`: the change is made only if nothing has this name.' }),
});

/** A design may name what its owner keeps: the names are kept, and what they stand for is only read. */
const withSpecResolved = async (body: unknown, replace: (spec: unknown) => Promise<unknown>) =>
  typeof body === 'object' && body !== null && 'spec' in body
    ? { ...body, spec: await replace(body.spec) }
    : body;

/** The routes that read, keep and remove one thing of a kind. */
export const oneKept =
  (kind: Kind): FastifyPluginAsync =>
  async (app) => {
    const { noun, id, body } = keptKinds[kind];
    const routes = app.withTypeProvider<ZodTypeProvider>();
    const keepAsSent = async (request: FastifyRequest) => {
      request.asSent = request.body;
      const find = app.findKept(request);
      if (kind === 'designs')
        request.body = await withSpecResolved(request.body, (spec) => replaceNames(spec, find));
    };

    routes.get(
      '/',
      {
        schema: {
          operationId: `read${id}`,
          tags: ['kept'],
          summary: `One ${noun} that you keep`,
          params: named,
          querystring: noQuery,
          response: {
            200: z.unknown().meta({ description: 'As it was put.' }),
            ...errorReplies(400, 401, 403, 404),
          },
        },
      },
      async ({ params: { name }, caller }, reply) => {
        const stored = await app.store.read(caller.owner, kind, name);
        if (!stored) throw notKept(kind, name);
        return sendKept(reply, stored);
      },
    );

    routes.put(
      '/',
      {
        config: { needs: 'write' },
        preValidation: keepAsSent,
        schema: {
          operationId: `keep${id}`,
          tags: ['kept'],
          summary: `Keep a ${noun} under a name, or change it`,
          description:
            'The same request twice is the same as once. Send the ETag that you read as `If-Match`, and nobody’s change is lost.',
          params: named,
          querystring: noQuery,
          headers: preconditions,
          body,
          response: {
            200: z.unknown().meta({ description: 'It replaced what was there, or was the same.' }),
            201: z.unknown().meta({ description: 'It is kept under a new name.' }),
            ...bodyErrorReplies(401, 403, 409, 412),
          },
        },
      },
      async (request, reply) => {
        const { name } = request.params;
        const put = await app.store.put(
          request.caller.owner,
          kind,
          name,
          request.asSent,
          expectationOf(request),
        );
        if (put.outcome === 'full') throw noMoreRoom(kind);
        if (put.outcome === 'stale' || !put.stored) throw changedMeanwhile(kind, name, put.stored);
        if (put.outcome === 'created')
          reply.code(201).header('location', `/v1/${kind}/${encodeURIComponent(name)}`);
        return sendKept(reply, put.stored);
      },
    );

    routes.delete(
      '/',
      {
        config: { needs: 'write' },
        schema: {
          operationId: `remove${id}`,
          tags: ['kept'],
          summary: `Remove a ${noun} that you keep`,
          params: named,
          querystring: noQuery,
          headers: preconditions,
          response: {
            204: z.undefined().meta({ description: 'It is gone.' }),
            ...errorReplies(400, 401, 403, 404, 412),
          },
        },
      },
      async (request, reply) => {
        const { name } = request.params;
        const outcome = await app.store.remove(request.caller.owner, kind, name, expectationOf(request));
        if (outcome === 'absent') throw notKept(kind, name);
        if (outcome === 'stale')
          throw changedMeanwhile(kind, name, await app.store.read(request.caller.owner, kind, name));
        return reply.code(204).send();
      },
    );
  };
