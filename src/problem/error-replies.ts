import { cannotBeFoldedReply, problemMediaType, problemReply } from './problem.ts';
import { statusPhrase } from './status-phrase.ts';

const meanings: Readonly<Record<number, string>> = {
  400: 'The request is malformed, or its schema refuses it.',
  401: 'The caller is not signed in: send a token as `Authorization: Bearer …`.',
  403: 'The caller may not do this.',
  404: 'There is no such thing.',
  405: 'The thing exists, but not for this method.',
  409: 'It clashes with what is stored.',
  412: 'A precondition of the request does not hold.',
  413: 'The body is too large.',
  415: 'The body is not `application/json`.',
  421: 'The request is for another host; see the service’s own address.',
  422: 'What is asked for was understood, but cannot be made.',
  429: 'Too many requests; see `Retry-After`.',
  500: 'A fault of the service.',
  503: 'The service is too busy, or its store cannot be reached; see `Retry-After`.',
};

const replyFor = (status: number) => ({
  description: meanings[status] ?? statusPhrase(status) ?? 'Error',
  content: { [problemMediaType]: { schema: status === 422 ? cannotBeFoldedReply : problemReply } },
});

type Reply = ReturnType<typeof replyFor>;

/** The replies of every route that reads a body. */
const bodyStatuses = [400, 413, 415] as const;

/**
 * The error replies of a route, for its `response` schema: `{ 200: plan, ...errorReplies(422) }`.
 * @param statuses what the route itself answers; with none, what any route may answer
 */
export function errorReplies<Status extends number>(...statuses: Status[]) {
  return Object.fromEntries([...statuses, 429, 503].map((status) => [status, replyFor(status)])) as Readonly<
    Record<Status | 429 | 503, Reply>
  >;
}

/** {@link errorReplies} of a route that reads a JSON body. */
export const bodyErrorReplies = <Status extends number>(...statuses: Status[]) =>
  errorReplies<Status | (typeof bodyStatuses)[number]>(...bodyStatuses, ...statuses);
