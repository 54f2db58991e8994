import type { FastifyReply } from 'fastify';
import { StoreUnavailable } from '../store/store-errors.ts';
import { HttpProblem } from './http-problem.ts';
import { type Problem, problemMediaType } from './problem.ts';
import { plainProblem, problemFromInput } from './problem-from.ts';

interface KnownError {
  readonly code?: unknown;
  readonly statusCode?: unknown;
  readonly message?: unknown;
  readonly validationContext?: unknown;
}

/** The framework's own errors in words that help the caller, by its error code. */
const detailByCode: Readonly<Record<string, string>> = {
  FST_ERR_BAD_URL: 'The URL holds a percent sign that does not encode a character.',
  FST_ERR_CTP_BODY_TOO_LARGE: 'The body is larger than 256 KiB.',
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: 'The body is not as long as Content-Length says.',
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'Send the body as "content-type: application/json".',
  FST_ERR_MAX_PARAM_LENGTH: 'A part of the URL is too long.',
};

const partNames: Readonly<Record<string, string>> = {
  headers: 'The headers are not valid',
  params: 'The URL is not valid',
  querystring: 'The query is not valid',
};

/** The problem for any error; one that is not the caller's says nothing of its cause. */
export function problemFrom(error: unknown): Problem {
  const { code, statusCode, message, validationContext } = (error ?? {}) as KnownError;
  const ofInput = problemFromInput(error);
  const part = partNames[String(validationContext)];
  if (ofInput && part) return plainProblem(400, `${part}: ${ofInput.detail}`, ofInput.errors);
  if (ofInput) return ofInput;
  const status = typeof statusCode === 'number' ? statusCode : 500;
  const detail = detailByCode[String(code)];
  if (detail !== undefined && status < 600) return plainProblem(status, detail);
  if (status >= 400 && status < 500) return plainProblem(status, String(message));
  return plainProblem(500, 'The service failed, and has logged why.');
}

/** When to ask again while the store cannot do its work. */
const storeRetrySeconds = 5;

/** Answers with the problem for an error, and logs the errors that are the service's own. */
export function sendProblem(reply: FastifyReply, error: unknown): FastifyReply {
  const problem = problemFrom(error);
  if (problem.status === 500) reply.log.error({ err: error }, 'a request failed');
  if (error instanceof StoreUnavailable) {
    reply.log.error({ err: error }, 'the store is unavailable');
    reply.header('retry-after', String(storeRetrySeconds));
  }
  const extra = problem.status === 500 ? { requestId: reply.request.id } : {};
  if (error instanceof HttpProblem) reply.headers(error.headers);
  // bytes, since text would have a charset added, which JSON media types do not have (RFC 8259 section 11)
  return reply
    .code(problem.status)
    .header('cache-control', 'no-store')
    .type(problemMediaType)
    .send(Buffer.from(JSON.stringify({ ...problem, ...extra })));
}
