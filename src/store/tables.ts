import type { Kysely, Transaction } from 'kysely';
import type { Kind } from './store.ts';

/** All that one owner keeps of one kind. Changes lock its row first, so that they follow one another. */
interface ShelfTable {
  owner: string;
  kind: Kind;
  /** How many things. */
  items: number;
  /** Bytes of all their revisions. */
  bytes: number;
  /** The highest version of anything removed: new things begin above, so that no version of a name returns. */
  highest_removed: number;
}

interface ItemTable {
  owner: string;
  kind: Kind;
  name: string;
  /** Of its current revision. */
  version: number;
  created: string;
}

interface RevisionTable {
  owner: string;
  kind: Kind;
  name: string;
  version: number;
  /** JSON text; no JSON column type, since those reorder members or change numbers. */
  body: string;
  /** Bytes of `body` as UTF-8. */
  bytes: number;
  changed: string;
}

interface ShareTable {
  id: string;
  owner: string;
  kind: Kind;
  name: string;
  /** SHA-256 of the secret, in hexadecimal. */
  secret_hash: string;
  created: string;
  expires: string | null;
}

/** A person of the group. The id is the owner of the member's things, and is never given again. */
interface MemberTable {
  id: string;
  name: string;
  /** 1, or 0 while suspended. */
  active: number;
  created: string;
}

interface TokenTable {
  id: string;
  /** The id of a member. */
  member: string;
  /** SHA-256 of the secret, in hexadecimal. */
  secret_hash: string;
  /** Scopes with commas between them. */
  scopes: string;
  created: string;
  expires: string | null;
  last_used: string | null;
  revoked: string | null;
  note: string | null;
}

/** A browser in which a member signed in with a token. */
interface SessionTable {
  /** SHA-256 of the cookie's secret, in hexadecimal. */
  secret_hash: string;
  /** The id of a token. */
  token: string;
  created: string;
  expires: string;
}

/** Rows are added, and changed by nothing but a restore. */
interface AuditTable {
  number: number;
  at: string;
  actor: string;
  actor_id: string | null;
  act: string;
  target: string | null;
  detail: string | null;
}

/** Numbers that grow. Acts on the group lock the row of `audit` first, so that they follow one another. */
interface CounterTable {
  name: 'audit';
  value: number;
}

export interface Tables {
  shelf: ShelfTable;
  item: ItemTable;
  revision: RevisionTable;
  share: ShareTable;
  member: MemberTable;
  token: TokenTable;
  session: SessionTable;
  audit: AuditTable;
  counter: CounterTable;
}

export type Database = Kysely<Tables>;
export type Change = Transaction<Tables>;
