import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { NewSession } from '../members/members.ts';
import { readTokenText } from '../members/secrets.ts';
import type { Given } from './given.ts';
import { addressOf, noteRefusal } from './identity.ts';

/** Why a browser was not signed in, for its page. */
interface NotSignedIn {
  readonly status: 401 | 429;
  readonly trouble: string;
  readonly headers: Readonly<Record<string, string>>;
}

/** Signs a browser in with a token that was pasted. The same guesses are counted as of tokens in headers. */
export async function signIn(
  request: FastifyRequest,
  pasted: string,
  { members, guesses }: Pick<FastifyInstance, 'members' | 'guesses'>,
): Promise<NewSession | NotSignedIn> {
  const text = pasted.trim();
  const address = addressOf(request);
  const waitSeconds = guesses.waitSeconds(address, text);
  if (waitSeconds !== undefined)
    return {
      status: 429,
      trouble: `Too many different tokens were refused. Try again in ${waitSeconds} seconds.`,
      headers: { 'retry-after': String(waitSeconds) },
    };
  const key = readTokenText(text);
  const session = key && (await members.signIn(key));
  guesses.ended(address, text, session !== undefined);
  if (session) return session;
  const given: Given = { by: 'token', text, ...(key ? { credential: { by: 'token', key } } : {}) };
  noteRefusal(request, given);
  return {
    status: 401,
    trouble: key
      ? 'This token is not taken. It was revoked or has ended, or its member is suspended, or a letter of it is wrong.'
      : 'This is no token. Copy all of it, from hemfold_ to its end.',
    headers: { 'www-authenticate': 'Bearer realm="hemfold", error="invalid_token"' },
  };
}
