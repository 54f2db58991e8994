import type { FastifyRequest } from 'fastify';
import type { Credential } from '../members/members.ts';
import { isSecret, readTokenText } from '../members/secrets.ts';
import { cookieOf } from './session-cookie.ts';

/** What a request gives to be known. */
export interface Given {
  readonly by: Credential['by'];
  /** The text as it came, by which guesses are told apart; it is never kept or logged. */
  readonly text: string;
  /** Absent for a text that no token or cookie of this service can have. */
  readonly credential?: Credential;
}

/** A scheme and its credentials, RFC 9110 section 11.4; the scheme's case does not matter. */
const bearer = /^bearer +(\S+) *$/i;

function givenToken(header: string): Given {
  const text = bearer.exec(header)?.[1] ?? '';
  const key = readTokenText(text);
  return {
    by: 'token',
    text: text === '' ? header : text,
    ...(key ? { credential: { by: 'token', key } } : {}),
  };
}

/** What a request gives: a header before a cookie, since a browser sends its cookie unasked. */
export function givenBy(request: FastifyRequest): Given | undefined {
  const header = request.headers.authorization;
  if (header !== undefined) return givenToken(header);
  const secret = cookieOf(request);
  if (secret === undefined) return undefined;
  return {
    by: 'cookie',
    text: secret,
    ...(isSecret(secret) ? { credential: { by: 'cookie', secret } } : {}),
  };
}
