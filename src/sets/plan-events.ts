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

/** A comment, which readers pass over: proxies and sockets give up where nothing is heard for long. */
const comment = ':\n\n';

/** Between two comments, ms. */
const commentEveryMs = 15_000;

/**
 * Answers with a plan that takes its time, as events: `progress` now and then, and in the end `plan`, or `problem` with what
 * would have been the error's body; a comment now and then, also while nothing is searched.
 * @param work starts at once
 */
export function sendEvents(
  reply: FastifyReply,
  work: (onProgress: (progress: SetProgress) => void) => Promise<SetPlanReply>,
): FastifyReply {
  const stream = new Readable({ read: () => undefined });
  const push = (text: string) => {
    if (!stream.destroyed) stream.push(text);
  };
  const say = (name: string, data: unknown) => push(event(name, data));
  const comments = setInterval(() => push(comment), commentEveryMs);
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
      clearInterval(comments);
      if (!stream.destroyed) stream.push(null);
    });
  return reply.type(eventStreamType).header('cache-control', 'no-store').send(stream);
}
