import type { z } from 'zod';
import { HttpProblem } from '../problem/http-problem.ts';
import { isStorable } from '../store/stored-time.ts';
import type { Caller } from './caller.ts';
import type { TokenWish } from './members.ts';
import type { tokenWish } from './replies.ts';

const refuse = (status: number, path: string, message: string, remedy: string) =>
  new HttpProblem(status, `Nothing was made: ${message}.`, [{ path, message, remedy }]);

/** A time as it is stored. */
function timeOf(text: string, now: Date): string {
  const time = new Date(text);
  if (time <= now) throw refuse(400, '/expires', 'the token would have ended already', 'give a later time');
  if (!isStorable(time))
    throw refuse(400, '/expires', 'the year has more than four digits', 'give an earlier time');
  return time.toISOString();
}

/**
 * The token that a caller may make: never one that outlasts the caller's own, and without the scope "admin" none that
 * can do more. So a token that was stolen makes none that stays when it ends.
 * @throws {HttpProblem} 400 or 403
 */
export function tokenWithin(caller: Caller, wish: z.output<typeof tokenWish>, now: Date): TokenWish {
  const missing = wish.scopes.findIndex((scope) => !caller.scopes.has(scope));
  if (missing !== -1 && !caller.scopes.has('admin'))
    throw refuse(
      403,
      `/scopes/${missing}`,
      `the token at hand cannot give the scope "${wish.scopes[missing]}"`,
      'leave it out, or ask whoever keeps the group',
    );
  const end = caller.proof?.expires;
  const expires = wish.expires === undefined ? end : timeOf(wish.expires, now);
  if (end !== undefined && expires !== undefined && expires > end)
    throw refuse(
      403,
      '/expires',
      `what you signed in with ends at ${end}, and cannot make a token that outlasts it`,
      'give a time up to that, or use a token that lasts longer',
    );
  return { scopes: wish.scopes, expires, note: wish.note };
}
