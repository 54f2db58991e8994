import type { FastifyRequest } from 'fastify';

/**
 * Whether a page of this very service sent a request, as its browser tells: by `Sec-Fetch-Site` (W3C Fetch Metadata),
 * or by `Origin` (RFC 6454 section 7) where a browser does not send that. Programs send neither.
 */
export function originOf(request: FastifyRequest): 'own' | 'foreign' | 'unsaid' {
  const site = request.headers['sec-fetch-site'];
  if (site !== undefined) return site === 'same-origin' ? 'own' : 'foreign';
  const { origin } = request.headers;
  if (origin === undefined) return 'unsaid';
  return origin === `${request.protocol}://${request.host}` ? 'own' : 'foreign';
}

/** Methods that change nothing, RFC 9110 section 9.2.1. */
const safeMethods = new Set(['GET', 'HEAD', 'OPTIONS']);
export const isSafe = ({ method }: FastifyRequest): boolean => safeMethods.has(method);
