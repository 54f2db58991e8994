import type { FastifyReply } from 'fastify';

/** A signal that is aborted when the caller goes away before the reply is sent. */
export function givenUp(reply: Pick<FastifyReply, 'raw'>): AbortSignal {
  const controller = new AbortController();
  reply.raw.once('close', () => {
    if (!reply.raw.writableFinished) controller.abort();
  });
  return controller.signal;
}
