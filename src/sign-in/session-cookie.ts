import type { FastifyReply, FastifyRequest } from 'fastify';

/**
 * The cookie of a signed-in browser. Over https it has the prefix that browsers let only the host itself set, over
 * https (RFC 6265bis section 4.1.3.2); who asks over http is told by TRUST_PROXY as well.
 */
const cookieName = (isSecure: boolean) => (isSecure ? '__Host-hemfold-session' : 'hemfold-session');

const isSecure = ({ protocol }: FastifyRequest): boolean => protocol === 'https';

const options = (request: FastifyRequest) =>
  ({ path: '/', httpOnly: true, sameSite: 'strict', secure: isSecure(request) }) as const;

/** The secret that a browser sends, if it sends one. */
export const cookieOf = (request: FastifyRequest): string | undefined =>
  request.cookies[cookieName(isSecure(request))];

/** @param expires when the browser forgets it */
export const setCookie = (reply: FastifyReply, secret: string, expires: string): FastifyReply =>
  reply.setCookie(cookieName(isSecure(reply.request)), secret, {
    ...options(reply.request),
    expires: new Date(expires),
  });

export const clearCookie = (reply: FastifyReply): FastifyReply =>
  reply.clearCookie(cookieName(isSecure(reply.request)), options(reply.request));
