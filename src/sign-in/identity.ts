import { normalizeIP } from '@fastify/rate-limit';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Caller } from '../members/caller.ts';
import type { Members } from '../members/members.ts';
import { type Given, givenBy } from './given.ts';
import type { Guesses } from './guesses.ts';
import { clearCookie } from './session-cookie.ts';

/** What is known of who asks. */
export type Identity =
  | { readonly is: 'known'; readonly caller: Caller }
  | { readonly is: 'unsaid' }
  | { readonly is: 'refused'; readonly by: Given['by'] }
  | { readonly is: 'guessing'; readonly waitSeconds: number }
  /** The store cannot tell; only routes that need a caller fail. */
  | { readonly is: 'unclear'; readonly error: unknown };

/** An address as it is counted: of IPv6 the network that one household has. */
export const addressOf = ({ ip }: FastifyRequest): string => normalizeIP(ip);

/**
 * Finds out who asks. A cookie that is not taken any more is removed from its browser.
 * @returns never throws, since routes that anybody may call need no answer
 */
export async function identityOf(
  request: FastifyRequest,
  reply: FastifyReply,
  { members, guesses }: { readonly members: Members; readonly guesses: Guesses },
): Promise<Identity> {
  const given = givenBy(request);
  if (!given) return { is: 'unsaid' };
  const address = addressOf(request);
  const waitSeconds = guesses.waitSeconds(address, given.text);
  if (waitSeconds !== undefined) return { is: 'guessing', waitSeconds };
  try {
    const caller = given.credential && (await members.identify(given.credential));
    guesses.ended(address, given.text, caller !== undefined);
    if (caller) return { is: 'known', caller };
    if (given.by === 'cookie') clearCookie(reply);
    noteRefusal(request, given);
    return { is: 'refused', by: given.by };
  } catch (error) {
    return { is: 'unclear', error };
  }
}

/** The log names the token that was meant, never its secret. */
export function noteRefusal(request: FastifyRequest, { by, credential }: Given): void {
  const token = credential?.by === 'token' ? credential.key.id : undefined;
  request.log.warn({ ip: request.ip, by, token }, 'a sign-in was refused');
}
