import { Readable } from 'node:stream';
import type { FastifyReply } from 'fastify';
import type { SetPlanReply } from '../../shared/sets/set-plan-reply.ts';
import type { SetProgress } from '../../shared/sets/set-progress.ts';
import { problemFrom } from '../problem/send-problem.ts';

/** Server-sent events, as the HTML standard defines them. */
export const eventStreamType = 'text/event-stream';

/** Whether a caller asks for events rather than for one reply. */
export const wantsEvents = ({ accept = '' }: { readonly accept?: string | undefined }): boolean =>
  accept.split(',').some((each) => each.split(';', 1)[0]?.trim().toLowerCase() === eventStreamType);

const event = (name: string, data: unknown): string => `event: ${name}\ndata: ${JSON.stringify(data)}\n\n`;

/**
 * Answers with a plan that takes its time, as events: `progress` now and then, and in the end `plan`, or `problem` with what
 * would have been the error's body.
 * @param work starts at once
 */
export function sendEvents(
  reply: FastifyReply,
  work: (onProgress: (progress: SetProgress) => void) => Promise<SetPlanReply>,
): FastifyReply {
  const stream = new Readable({ read: () => undefined });
  const say = (name: string, data: unknown) => {
    if (!stream.destroyed) stream.push(event(name, data));
  };
  work((progress) => say('progress', progress))
    .then(
      (plan) => say('plan', plan),
      (error: unknown) => {
        // the status is sent already: no error handler sees this any more
        const problem = problemFrom(error);
        if (problem.status === 500) reply.log.error({ err: error }, 'a request failed');
        say('problem', problem);
      },
    )
    .finally(() => {
      if (!stream.destroyed) stream.push(null);
    });
  return reply.type(eventStreamType).header('cache-control', 'no-store').send(stream);
}
