/** What a user keeps by name. */
export const kinds = ['conventions', 'cutters', 'stock', 'designs'] as const;
export type Kind = (typeof kinds)[number];

/** The current time; handed in, so that tests can set it. */
export type Clock = () => Date;

/** One stored thing, as of one version. */
export interface Stored {
  readonly owner: string;
  readonly kind: Kind;
  readonly name: string;
  /** Grows with every change; a name that was removed and stored again never repeats one. */
  readonly version: number;
  /** Any JSON value, as it was stored: the same order of members. */
  readonly body: unknown;
  /** When its first version was stored, as in `2025-11-25T08:30:00.000Z`. */
  readonly created: string;
  /** When this version was stored. */
  readonly changed: string;
}

/** What must hold before a change, as of RFC 9110 section 13.1: `If-Match` or `If-None-Match: *`. */
export type Expectation = { readonly version: number } | 'absent' | 'present' | 'any';

/** A part of a list in the order of names. */
export interface Page {
  /** The name after which to begin; it need not exist any more. */
  readonly after?: string | undefined;
  /** The most items to give, 1 to {@link mostItemsPerPage}. */
  readonly limit: number;
}

export const mostItemsPerPage = 100;

export interface Listed {
  readonly items: readonly Stored[];
  /** What to give as `after` for the following page; absent on the last one. */
  readonly next?: string | undefined;
}

export interface Put {
  /**
   * - `created`, `replaced`: stored durably.
   * - `same`: the body is equal to the stored one, with the same order of members, so nothing was done and the
   *   version stands.
   * - `stale`: the expectation does not hold; nothing was done.
   * - `full`: the owner keeps as many things, or as many bytes, of this kind as the limits allow.
   */
  readonly outcome: 'created' | 'replaced' | 'same' | 'stale' | 'full';
  /** What is stored now; absent if nothing is. */
  readonly stored?: Stored;
}

/** One version of a design, without its body. */
export interface Version {
  readonly version: number;
  readonly changed: string;
}

/** A part of the versions of a design, newest first. */
export interface VersionPage {
  /** Only versions below this one. */
  readonly before?: number | undefined;
  /** The most versions to give, 1 to {@link mostItemsPerPage}. */
  readonly limit: number;
}

export interface Versions {
  readonly items: readonly Version[];
  /** What to give as `before` for the following page; absent on the last one. */
  readonly next?: number | undefined;
}

/** A share link as its owner sees it: the secret is not kept. */
export interface Share {
  readonly id: string;
  readonly created: string;
  /** From this moment on the link gives nothing. */
  readonly expires?: string;
}

/** A new share link; the only time that its secret is seen. */
export interface NewShare {
  readonly id: string;
  /** 256 random bits as 43 characters that need no escaping in a URL. */
  readonly secret: string;
}

/**
 * What users keep. A change is one transaction, and on disk when its promise resolves. Owners never see each other's
 * things: what another owns answers as if it did not exist.
 *
 * Every method throws {@link StoreUnavailable} when the disk is full, a file stays locked or the database cannot be
 * reached, and may be tried again later. A change that failed so was not made, save when a connection to PostgreSQL
 * broke at its very end: then it may have been.
 */
export interface Store {
  /**
   * Lists by name, ascending by Unicode code points. A page may hold fewer items than its limit and still have a
   * `next`, since a page of large bodies ends early.
   * @throws {RangeError} for a limit out of range
   */
  list(owner: string, kind: Kind, page: Page): Promise<Listed>;
  /**
   * Reads the current version, or a given one. Older versions of designs are kept; of other kinds they are not.
   */
  read(owner: string, kind: Kind, name: string, version?: number): Promise<Stored | undefined>;
  /**
   * Stores a body under a name.
   * @param body any JSON value; -0 is kept as 0
   * @throws {UnstorableName} @throws {BodyTooLarge} @throws {TypeError} for a body that is not JSON
   */
  put(owner: string, kind: Kind, name: string, body: unknown, expected: Expectation): Promise<Put>;
  /** Removes a thing with all its versions and share links. */
  remove(
    owner: string,
    kind: Kind,
    name: string,
    expected: Expectation,
  ): Promise<'removed' | 'absent' | 'stale'>;
  /**
   * The versions of a design, newest first: none is lost until the design is removed.
   * @throws {RangeError} for a limit out of range
   */
  versions(owner: string, design: string, page: VersionPage): Promise<Versions>;
  /**
   * Makes a share link to a design, which shows its current version.
   * @param options `expires` is a time that `Date` reads
   * @returns `absent` without such a design, `full` if it has as many links as the limits allow
   * @throws {RangeError} for an `expires` that is no time
   */
  share(
    owner: string,
    design: string,
    options?: { readonly expires?: string | undefined },
  ): Promise<NewShare | 'absent' | 'full'>;
  /** The design behind a share link; undefined for one that is wrong, revoked or expired. */
  shared(secret: string, now: Date): Promise<Stored | undefined>;
  /** The share links of a design, oldest first, expired ones too. */
  shares(owner: string, design: string): Promise<readonly Share[]>;
  /** Revokes a share link; false if there was none. */
  unshare(owner: string, design: string, id: string): Promise<boolean>;
  /** Resolves if the store can be read; opens it and brings its tables up to date if that was not done yet. */
  ready(): Promise<void>;
  /** Lets running calls end, then closes. Later calls are refused. */
  close(): Promise<void>;
}
