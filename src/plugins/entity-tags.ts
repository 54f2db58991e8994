import etag from '@fastify/etag';
import type { FastifyReply, FastifyRequest } from 'fastify';
import fp from 'fastify-plugin';
import { problemMediaType } from '../problem/problem.ts';
import { plainProblem } from '../problem/problem-from.ts';

const opaque = (tag: string) => tag.trim().replace(/^W\//, '');

/** The weak comparison of RFC 9110 section 8.8.3.2 against a list of tags, or `*`. */
export function noneMatchFails(ifNoneMatch: string | undefined, tag: string): boolean {
  if (ifNoneMatch === undefined) return false;
  if (ifNoneMatch.trim() === '*') return true;
  return (ifNoneMatch.match(/(?:W\/)?"[^"]*"/g) ?? []).some((each) => opaque(each) === opaque(tag));
}

/**
 * RFC 9110 section 13.1.2: a match means 304 for GET and HEAD, and 412 for other methods. Of those only a POST
 * that computed its 200 is judged here; what changes a store must look at its preconditions before the change.
 */
function judge(request: FastifyRequest, reply: FastifyReply, payload: unknown): unknown {
  if (reply.statusCode < 200 || reply.statusCode > 299) {
    reply.removeHeader('etag');
    return payload;
  }
  const tag = reply.getHeader('etag');
  if (typeof tag !== 'string' || !noneMatchFails(request.headers['if-none-match'], tag)) return payload;
  if (request.method === 'GET' || request.method === 'HEAD') {
    reply.code(304).removeHeader('content-type');
    // the framework strips a HEAD reply itself, after it has set the length
    return request.method === 'HEAD' ? payload : null;
  }
  if (request.method !== 'POST' || reply.statusCode !== 200) return payload;
  reply.code(412).type(problemMediaType).removeHeader('content-disposition').removeHeader('etag');
  return Buffer.from(
    JSON.stringify(plainProblem(412, 'If-None-Match names the very result of this request.')),
  );
}

/**
 * Gives every successful reply a strong entity tag, and honours If-None-Match.
 * @see https://github.com/fastify/fastify-etag
 */
export default fp(
  async (app) => {
    await app.register(etag, { algorithm: 'sha256', replyWith304: false });
    app.addHook('onSend', async (request, reply, payload) => judge(request, reply, payload));
  },
  { name: 'entity-tags' },
);
