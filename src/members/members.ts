import type { Page } from '../store/store.ts';
import type { Actor, AuditPage, AuditPart } from './audit.ts';
import type { Caller, Scope } from './caller.ts';
import type { TokenKey } from './secrets.ts';

/** A person of the group. */
export interface Member {
  /** Never given again, also after the member is removed; the owner of the member's things. */
  readonly id: string;
  /** Unique among the members there are. */
  readonly name: string;
  /** False while suspended: no token of the member is taken then, and nothing is lost. */
  readonly active: boolean;
  readonly created: string;
}

/** What a member shows to be known. The secret in it is not kept. */
export interface Token {
  /** Ids sort by the time at which tokens were made. */
  readonly id: string;
  readonly scopes: readonly Scope[];
  readonly created: string;
  /** From this moment on the token is not taken; absent if that never comes. */
  readonly expires?: string;
  /** To the minute. */
  readonly lastUsed?: string;
  /** When it was revoked; such tokens are listed for a while. */
  readonly revoked?: string;
  /** What it is for, in its maker's words. */
  readonly note?: string;
}

/** A new token; the only time that its text is seen. */
export interface NewToken extends Token {
  readonly text: string;
}

export interface TokenWish {
  readonly scopes: readonly Scope[];
  /** A time in the form of `Date.toISOString`. */
  readonly expires?: string | undefined;
  readonly note?: string | undefined;
}

/** How many there may be. */
export interface MemberLimits {
  readonly members: number;
  /** Of one member, that are neither revoked nor expired. */
  readonly tokens: number;
  /** Revoked and expired tokens of one member that are still listed. */
  readonly deadTokens: number;
  /** Signed-in browsers by one token; the oldest is signed out for a new one. */
  readonly sessions: number;
}

export const defaultMemberLimits: MemberLimits = Object.freeze({
  members: 1000,
  tokens: 100,
  deadTokens: 100,
  sessions: 20,
});

/** What a browser or a program gives to be known. */
export type Credential =
  | { readonly by: 'token'; readonly key: TokenKey }
  | { readonly by: 'cookie'; readonly secret: string };

/** A browser that was signed in; the only time that its secret is seen. */
export interface NewSession {
  readonly secret: string;
  readonly expires: string;
  readonly caller: Caller;
}

/** A change that would leave the group without an active member who has a token to keep it. Nothing was changed. */
export type LastAdmin = 'last-admin';

export interface Part<Item> {
  readonly items: readonly Item[];
  /** What to give as `after` for the following page; absent on the last one. */
  readonly next?: string | undefined;
}

/**
 * Who belongs to the group, what they show to be known, and what was done about it. Every act is written to the
 * audit log in the transaction that does it. Every method may throw {@link StoreUnavailable}.
 */
export interface Members {
  /** Members by name, ascending by code points. */
  list(page: Page): Promise<Part<Member>>;
  read(name: string): Promise<Member | undefined>;
  /** Adds a member without a token, or suspends or resumes one. */
  put(
    by: Actor,
    name: string,
    wish: { readonly active: boolean },
  ): Promise<
    { readonly outcome: 'added' | 'changed' | 'same'; readonly member: Member } | 'full' | LastAdmin
  >;
  /**
   * Adds a member with a first token.
   * @param options `withHomeThings` gives the new member all that was kept while the service was at home
   */
  add(
    by: Actor,
    name: string,
    wish: TokenWish,
    options?: { readonly withHomeThings?: boolean },
  ): Promise<{ readonly member: Member; readonly token: NewToken } | 'taken' | 'full'>;
  /** Removes a member with everything of the member's: things, share links, tokens, sessions. */
  remove(by: Actor, name: string): Promise<'removed' | 'absent' | LastAdmin>;
  /** The tokens of a member, oldest first; undefined without such a member. */
  tokens(name: string, page: Page): Promise<Part<Token> | undefined>;
  makeToken(by: Actor, name: string, wish: TokenWish): Promise<NewToken | 'absent' | 'full'>;
  /**
   * Revokes a token, and signs out the browsers that were signed in with it. Done again, it changes nothing.
   * @param of `member` names whose token it must be; `within` are the scopes that it may have, if not every one
   */
  revoke(
    by: Actor,
    id: string,
    of?: { readonly member?: string; readonly within?: ReadonlySet<Scope> },
  ): Promise<'revoked' | 'absent' | 'beyond' | LastAdmin>;
  /** Who gave a credential; undefined for one that is wrong, revoked or expired, or of a suspended member. */
  identify(credential: Credential): Promise<Caller | undefined>;
  /** Signs a browser in; undefined for a token that is not taken. */
  signIn(key: TokenKey): Promise<NewSession | undefined>;
  /** Signs a browser out. */
  signOut(secret: string): Promise<void>;
  /** Whether an active member has a token with which the group can be kept. */
  hasAdmin(): Promise<boolean>;
  /** What was done, newest first. */
  audit(page: AuditPage): Promise<AuditPart>;
}
