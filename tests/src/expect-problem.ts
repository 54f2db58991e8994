import { expect } from 'vitest';
import { type ProblemError, problemMediaType, problemReply } from '../../src/problem/problem.ts';

interface Reply {
  readonly statusCode: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly body: string;
}

/** Holds a reply to RFC 9457 and to our own schema, and gives back its body. */
export function expectProblem(reply: Reply, status: number) {
  expect(reply.statusCode).toBe(status);
  expect(reply.headers['content-type']).toBe(problemMediaType);
  expect(reply.headers.etag, 'an error has no entity tag').toBeUndefined();
  const problem = problemReply.parse(JSON.parse(reply.body));
  expect(problem.status, 'RFC 9457 section 3.1.2: the same as the HTTP status').toBe(status);
  return problem as typeof problem & { readonly errors: readonly ProblemError[] };
}
