import { once } from 'node:events';
import { PassThrough } from 'node:stream';
import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { archiveMediaType } from '../../../src/archive/archive.ts';
import { archiveFileName } from '../../../src/archive/file-name.ts';
import { oneAtATime } from '../../../src/archive/one-at-a-time.ts';
import { actorOf } from '../../../src/members/audit.ts';
import { noQuery } from '../../../src/no-query.ts';
import { errorReplies } from '../../../src/problem/error-replies.ts';

export default (async (app) => {
  const turn = oneAtATime('export');
  app.withTypeProvider<ZodTypeProvider>().get(
    '/',
    {
      config: { needs: 'admin' },
      exposeHeadRoute: false, // to ask for its headers would be to write everything and note it
      schema: {
        operationId: 'exportEverything',
        tags: ['members'],
        summary: 'Everything that is kept, of everybody, as one file',
        description:
          'One JSON object a line; the first says what the file is, the last how many lines it has and their hash. It holds hashes of tokens and links, and no secret. Keep it as you keep the database.',
        querystring: noQuery,
        response: {
          200: {
            description: 'The file, one state of everything.',
            content: { [archiveMediaType]: { schema: z.string() } },
          },
          ...errorReplies(400, 401, 403, 409),
        },
      },
    },
    async ({ caller, log }, reply) => {
      const leave = turn();
      const out = new PassThrough();
      const done = app.archive.exportTo(actorOf(caller), out).finally(leave);
      // a reader that left, or a store that failed midway: the file has no end then, which its reader sees
      done.catch((error: unknown) => {
        log.warn({ err: error }, 'an export was not finished');
        out.destroy(error instanceof Error ? error : new Error(String(error)));
      });
      await once(out, 'readable'); // what fails before the first byte is a problem reply
      return reply
        .type(archiveMediaType)
        .header('cache-control', 'no-store')
        .header('content-disposition', `attachment; filename="${archiveFileName(app.clock())}"`)
        .send(out as unknown as string); // its reader gets text
    },
  );
}) satisfies FastifyPluginAsync;
