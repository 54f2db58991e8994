import type { FastifyPluginAsync } from 'fastify';
import { signInStyle } from '../../../src/sign-in/style.ts';

/** A file of its own, since the security policy lets no page bring style inside. */
export default (async (app) => {
  app.get('/', { config: { needs: 'nothing' } }, async (_request, reply) =>
    reply.type('text/css; charset=utf-8').header('cache-control', 'no-cache').send(signInStyle),
  );
}) satisfies FastifyPluginAsync;
