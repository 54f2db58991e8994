import type { FastifyReply } from 'fastify';
import { HttpProblem } from '../problem/http-problem.ts';

/** Thrown where work ends because nobody waits for it any more; nobody reads the answer. */
export class GivenUp extends HttpProblem {
  constructor() {
    super(503, 'The caller went away before the answer was ready.');
  }
}

/** A signal that is aborted when the caller goes away before the reply is sent. */
export function givenUp(reply: Pick<FastifyReply, 'raw'>): AbortSignal {
  const controller = new AbortController();
  reply.raw.once('close', () => {
    if (!reply.raw.writableFinished) controller.abort();
  });
  return controller.signal;
}
