import type { ProblemError } from './problem.ts';

/** Thrown by a route for a plain HTTP error, such as 404, 409 or 412; its text reaches the caller. */
export class HttpProblem extends Error {
  override readonly name = 'HttpProblem';
  readonly statusCode: number;
  readonly errors: readonly ProblemError[];
  readonly headers: Readonly<Record<string, string>>;
  constructor(
    statusCode: number,
    detail: string,
    errors: readonly ProblemError[] = [],
    headers: Readonly<Record<string, string>> = {},
  ) {
    super(detail);
    this.statusCode = statusCode;
    this.errors = errors;
    this.headers = headers;
  }
}
