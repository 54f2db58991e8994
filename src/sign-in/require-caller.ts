import type { FastifyRequest } from 'fastify';
import type { Caller, Scope } from '../members/caller.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import type { Identity } from './identity.ts';
import { isSafe, originOf } from './origin.ts';

/** What would be taken, and why what was sent is not: RFC 6750 section 3. */
const challenge = (parameters: Readonly<Record<string, string>> = {}) => ({
  'www-authenticate': `Bearer ${Object.entries({ realm: 'hemfold', ...parameters })
    .map(([name, value]) => `${name}="${value}"`)
    .join(', ')}`,
});

const howToSignIn = 'send a token as "Authorization: Bearer …", or sign in at /sign-in with a browser';

const notSignedIn = (detail: string, parameters: Readonly<Record<string, string>> = {}) =>
  new HttpProblem(
    401,
    detail,
    [{ path: '', message: 'a caller must be known here', remedy: howToSignIn }],
    challenge(parameters),
  );

/** Answered to who guesses. */
export const tooManyGuesses = (waitSeconds: number) =>
  new HttpProblem(
    429,
    `Too many different tokens from this address were refused; ask again in ${waitSeconds} seconds.`,
    [],
    { 'retry-after': String(waitSeconds) },
  );

/**
 * The caller, who must be known.
 * @throws {HttpProblem} 401, or 429 for who guesses
 * @throws the error of a store that cannot tell
 */
export function requireKnown(identity: Identity): Caller {
  switch (identity.is) {
    case 'known':
      return identity.caller;
    case 'unsaid':
      throw notSignedIn('You are not signed in.');
    case 'refused':
      throw identity.by === 'cookie'
        ? notSignedIn('This browser is not signed in any more.')
        : notSignedIn(
            'The token is not taken: it is wrong, revoked or expired, or its member is suspended.',
            { error: 'invalid_token' },
          );
    case 'guessing':
      throw tooManyGuesses(identity.waitSeconds);
    case 'unclear':
      throw identity.error;
  }
}

/** @throws {HttpProblem} 403 for a caller without the scope */
export function requireScope({ scopes }: Caller, scope: Scope): void {
  if (scopes.has(scope)) return;
  throw new HttpProblem(
    403,
    `This needs a token with the scope "${scope}".`,
    [
      {
        path: '',
        message: `the scopes at hand are: ${[...scopes].join(', ')}`,
        remedy: 'use another token, or ask whoever keeps the group for one',
      },
    ],
    challenge({ error: 'insufficient_scope', scope }),
  );
}

/**
 * Keeps foreign pages from using what a browser sends unasked: its cookie or, at home, that it runs on this machine.
 * @throws {HttpProblem} 403 for a request that may change something and does not come from here
 */
export function requireOwnOrigin(request: FastifyRequest, proof: 'cookie' | 'home'): void {
  if (isSafe(request)) return;
  const origin = originOf(request);
  if (origin === 'own' || (origin === 'unsaid' && proof === 'home')) return;
  throw new HttpProblem(403, 'A page of another site sent this, so nothing was done.', [
    {
      path: '',
      message: 'neither Sec-Fetch-Site nor Origin says that a page of this service sent the request',
      remedy: 'use the pages of this service; programs send a token and no cookie',
    },
  ]);
}
