/** What a caller may do: `read` plans and reads, `write` stores and removes, `admin` keeps the group. */
export const scopes = ['read', 'write', 'admin'] as const;
export type Scope = (typeof scopes)[number];

/** By what a member was known: a token sent along, or the cookie of a browser that was signed in with one. */
export interface Proof {
  readonly by: 'token' | 'cookie';
  /** The id of the token. */
  readonly token: string;
  /** When that token, or the cookie, ends; absent if it does not. */
  readonly expires?: string | undefined;
}

/** Who asks: under whose name things are kept, and what this caller may do. */
export interface Caller {
  /** Key of the caller's things in the store. */
  readonly owner: string;
  /** What people call this caller. */
  readonly name: string;
  readonly scopes: ReadonlySet<Scope>;
  /** Absent at home, where nobody signs in. */
  readonly proof?: Proof;
}

/** The one user of a service at home, which only this machine can reach. */
export const homeCaller: Caller = Object.freeze({ owner: 'home', name: 'home', scopes: new Set(scopes) });
