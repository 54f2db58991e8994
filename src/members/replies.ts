import { z } from 'zod';
import { storedName } from '../../shared/spec/stored-name.ts';
import { moment } from '../replies/moment.ts';
import { next } from '../replies/next-page.ts';
import { acts } from './audit.ts';
import { scopes } from './caller.ts';

const scopeList = z.array(z.enum(scopes)).meta({
  description: '`read` plans and reads, `write` keeps and removes, `admin` keeps the group.',
});

const tokenId = z.string().regex(/^[\da-f]{20}$/, 'an id of a token has 20 hexadecimal digits');

/** A member's name in a URL. */
export const memberParameter = z.strictObject({
  member: storedName.meta({ description: 'The name of a member.', examples: ['Ada'] }),
});

/** A member's token in a URL. */
export const tokenParameters = memberParameter.extend({
  id: tokenId.meta({ description: 'The id of a token, as the list of tokens has it.' }),
});

export const memberReply = z
  .strictObject({
    name: z.string(),
    active: z.boolean().meta({ description: 'False while suspended: then no token of the member is taken.' }),
    created: moment('When the member was added.'),
  })
  .meta({ id: 'Member', description: 'A person of the group.' });

export const memberList = z.strictObject({ items: z.array(memberReply), next }).meta({ id: 'MemberList' });

export const memberWish = z
  .strictObject({
    active: z
      .boolean()
      .default(true)
      .meta({ description: 'False suspends the member, and signs out the member’s browsers.' }),
  })
  .meta({ id: 'MemberWish' });

const tokenMembers = {
  id: tokenId,
  scopes: scopeList,
  created: moment('When the token was made.'),
  expires: moment('From this moment on it is not taken; absent if that never comes.').optional(),
  lastUsed: moment('When it was last used, to the minute.').optional(),
  revoked: moment('When it was revoked.').optional(),
  note: z.string().optional().meta({ description: 'What it is for.' }),
};

export const tokenReply = z
  .strictObject({
    ...tokenMembers,
    current: z.boolean().meta({ description: 'Whether this very request was made with it.' }),
  })
  .meta({ id: 'Token', description: 'What a member shows to be known, without its secret.' });

export const tokenList = z.strictObject({ items: z.array(tokenReply), next }).meta({ id: 'TokenList' });

export const newTokenReply = z
  .strictObject({
    ...tokenMembers,
    token: z
      .string()
      .meta({ description: 'The token itself. It is shown this once: only its hash is kept.' }),
  })
  .meta({ id: 'NewToken', description: 'A new token.' });

export const tokenWish = z
  .strictObject({
    scopes: z
      .array(z.enum(scopes))
      .min(1)
      .max(scopes.length)
      .refine((list) => new Set(list).size === list.length, 'a scope is listed twice')
      .meta({ description: 'What the token may do; without `admin` no more than the token at hand.' }),
    expires: z.iso
      .datetime({ offset: true })
      .optional()
      .meta({
        description: 'When it ends; not after the token at hand. Default: as that one.',
        examples: ['2026-12-31T00:00:00Z'],
      }),
    note: z
      .string()
      .trim()
      .min(1)
      .max(200)
      .regex(/^\P{C}*$/u, 'control characters are not kept')
      .optional()
      .meta({ description: 'What it is for, in your words.', examples: ['the workshop’s laptop'] }),
  })
  .meta({ id: 'TokenWish' });

export const meReply = z
  .strictObject({
    mode: z
      .enum(['home', 'group'])
      .meta({ description: '`home`: one user, whom only this machine can reach. `group`: members sign in.' }),
    name: z.string().meta({ description: 'What the caller is called.' }),
    scopes: scopeList,
    signedInBy: z.enum(['token', 'cookie']).optional().meta({ description: 'Absent at home.' }),
    expires: moment(
      'When what this caller signed in with ends, a token or a browser’s session; absent if it does not.',
    ).optional(),
  })
  .meta({ id: 'Me', description: 'Who asks, and what this caller may do.' });

export const auditEntryReply = z
  .strictObject({
    number: z.int().min(1).meta({ description: 'Grows by one with each entry.' }),
    at: moment('When it was done.'),
    actor: z.string().meta({ description: 'Who did it, by the name of then.' }),
    actorId: z.string().optional().meta({
      description: 'The member who did it; absent for the command line and for a service at home.',
    }),
    act: z.enum(acts),
    target: z.string().optional().meta({ description: 'The member to whom it was done.' }),
    detail: z.string().optional(),
  })
  .meta({ id: 'AuditEntry' });

export const auditList = z
  .strictObject({
    items: z.array(auditEntryReply),
    next: z
      .int()
      .optional()
      .meta({ description: 'Send it as `before` for the following page; absent on the last one.' }),
  })
  .meta({ id: 'AuditList' });
