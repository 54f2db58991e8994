import fp from 'fastify-plugin';

/** While the service stops, a reply ends its connection, which would otherwise be waited for. */
export default fp(
  async (app) => {
    let stops = false;
    app.addHook('preClose', async () => {
      stops = true;
    });
    app.addHook('onSend', async (_request, reply, payload) => {
      if (stops) reply.header('connection', 'close');
      return payload;
    });
  },
  { name: 'last-replies' },
);
