import { commandLine } from '../../members/audit.ts';
import type { NewToken, Token } from '../../members/members.ts';
import { allPages } from './all-pages.ts';
import { type Output, type RecordsWork, Refused } from './run-with-records.ts';
import { day, table } from './table.ts';
import { nameFrom, type TokenOptions, wishFrom } from './wish.ts';

/** The token alone goes to standard output, so that it can be caught there. */
export function showNewToken({ text, scopes, expires }: NewToken, { show, report }: Output): void {
  const until = expires === undefined ? '' : ` until ${expires}`;
  report(`This token may ${scopes.join(', ')}${until}, and is shown only now:\n`);
  show(`${text}\n`);
}

const noMember = (name: string) => new Refused(`No member is called ${JSON.stringify(name)}.`);

function stateOf({ revoked, expires }: Token, now: string): string {
  if (revoked !== undefined) return `revoked ${day(revoked)}`;
  if (expires === undefined) return 'lasting';
  return `${expires > now ? 'until' : 'ended'} ${day(expires)}`;
}

export const listTokens =
  (text: string): RecordsWork =>
  async ({ members }, { show }) => {
    const name = nameFrom(text);
    const all = await allPages((page) => members.tokens(name, page));
    if (!all) throw noMember(name);
    const now = new Date().toISOString();
    const rows = all.map((token) => [
      token.id,
      token.scopes.join(','),
      stateOf(token, now),
      day(token.lastUsed),
      token.note ?? '',
    ]);
    show(table([['id', 'scopes', 'state', 'last used', 'note'], ...rows]));
  };

export const addToken =
  (text: string, options: TokenOptions): RecordsWork =>
  async ({ members }, output) => {
    const name = nameFrom(text);
    const made = await members.makeToken(commandLine, name, wishFrom(options, new Date()));
    if (made === 'absent') throw noMember(name);
    if (made === 'full') throw new Refused(`${name} has as many tokens as the service allows; revoke some.`);
    showNewToken(made, output);
  };

export const revokeToken =
  (id: string): RecordsWork =>
  async ({ members }, { report }) => {
    const outcome = await members.revoke(commandLine, id);
    if (outcome === 'absent') throw new Refused(`No token has the id ${JSON.stringify(id)}.`);
    if (outcome === 'last-admin')
      throw new Refused('Nothing was changed, since nobody would be left to keep the group.');
    report('The token is revoked.\n');
  };
