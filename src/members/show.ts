import type { z } from 'zod';
import type { Caller } from './caller.ts';
import type { Member, NewToken, Token } from './members.ts';
import type { memberReply, newTokenReply, tokenReply } from './replies.ts';

/** A member as a reply has it; the id stays inside. */
export const showMember = ({ name, active, created }: Member): z.output<typeof memberReply> => ({
  name,
  active,
  created,
});

/** A token as its member and those who keep the group see it. */
export const showToken = (token: Token, { proof }: Caller): z.output<typeof tokenReply> => ({
  ...token,
  scopes: [...token.scopes],
  current: proof?.token === token.id,
});

/** A new token, this once with its text. */
export const showNewToken = ({ text, ...token }: NewToken): z.output<typeof newTokenReply> => ({
  ...token,
  scopes: [...token.scopes],
  token: text,
});
