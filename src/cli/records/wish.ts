import { storedName } from '../../../shared/spec/stored-name.ts';
import { homeCaller } from '../../members/caller.ts';
import type { TokenWish } from '../../members/members.ts';
import { tokenWish } from '../../members/replies.ts';
import { tokenWithin } from '../../members/token-within.ts';
import { problemFromInput } from '../../problem/problem-from.ts';
import { problemText } from '../../problem/problem-text.ts';
import { readWith } from '../../problem/read-with.ts';
import { Refused } from './run-with-records.ts';

/** What a command line says of a token to be made. */
export interface TokenOptions {
  readonly scopes?: string;
  readonly expires?: string;
  readonly note?: string;
}

/** @throws {Refused} with the reasons that reading gives */
function orRefuse<Result>(read: () => Result): Result {
  try {
    return read();
  } catch (error) {
    const problem = problemFromInput(error);
    throw problem ? new Refused(problemText({ ...problem, title: 'That cannot be done' })) : error;
  }
}

/** A day is its beginning, everywhere the same: UTC. */
const momentOf = (text: string) => (/^\d{4}-\d\d-\d\d$/.test(text) ? `${text}T00:00:00Z` : text);

/** The token that was asked for; whoever may use the command line may make any. */
export const wishFrom = ({ scopes = '', expires, note }: TokenOptions, now: Date): TokenWish =>
  orRefuse(() => {
    const wish = readWith(tokenWish, {
      scopes: scopes.split(',').map((scope) => scope.trim()),
      ...(expires === undefined ? {} : { expires: momentOf(expires) }),
      ...(note === undefined ? {} : { note }),
    });
    return tokenWithin(homeCaller, wish, now);
  });

/** A member's name, as it is stored. */
export const nameFrom = (text: string): string => orRefuse(() => readWith(storedName, text));
