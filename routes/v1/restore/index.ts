import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { archiveMediaType } from '../../../src/archive/archive.ts';
import { oneAtATime } from '../../../src/archive/one-at-a-time.ts';
import { restoredReply, restoreProblem, restoreQuery } from '../../../src/archive/restore-over-http.ts';
import { actorOf } from '../../../src/members/audit.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';
import { sendProblem } from '../../../src/problem/send-problem.ts';

/** The file as it came; its lines are read later, one by one. */
const file = z.any().meta({ type: 'string', description: 'A file that `GET /v1/export` gave.' });

export default (async (app) => {
  const { group, restoreBytes } = app.config;
  const turn = oneAtATime('restore');
  app.removeAllContentTypeParsers();
  app.addContentTypeParser(
    archiveMediaType,
    { parseAs: 'buffer', bodyLimit: restoreBytes },
    async (_request: unknown, body: Buffer) => body,
  );
  app.setErrorHandler((error, _request, reply) => sendProblem(reply, restoreProblem(error, restoreBytes)));

  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      config: { needs: 'admin' },
      schema: {
        operationId: 'restoreEverything',
        tags: ['members'],
        summary: 'Put the content of an exported file in the place of everything',
        description:
          'All of the file or nothing: every line is checked before anything is changed. Members and tokens are those of the file afterwards, and every browser is signed out. `hemfold restore` does the same on the command line, with files of any size.',
        consumes: [archiveMediaType],
        querystring: restoreQuery,
        body: file,
        response: { 200: restoredReply, ...errorReplies(400, 401, 403, 409, 413, 415) },
      },
    },
    async ({ body, query, caller }) => {
      const leave = turn();
      try {
        const source = async function* () {
          yield body as Buffer;
        };
        const options = { replace: query.replace === 'true', needsAdmin: group };
        const outcome = await app.archive.restore(actorOf(caller), source, options);
        if (typeof outcome === 'string') throw restoreProblem(outcome, restoreBytes);
        return outcome;
      } finally {
        leave();
      }
    },
  );
}) satisfies FastifyPluginAsync;
