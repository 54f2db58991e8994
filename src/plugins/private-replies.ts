import fp from 'fastify-plugin';

/** Replies of the API may hold what only the caller may see, and are asked for again: with its tag a reply is small. */
export default fp(
  async (app) => {
    app.addHook('onSend', async (request, reply, payload) => {
      if (request.url.startsWith('/v1/') && !reply.hasHeader('cache-control'))
        reply.header('cache-control', 'private, no-cache');
      return payload;
    });
  },
  { name: 'private-replies' },
);
