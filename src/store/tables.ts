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

export interface Tables {
  shelf: ShelfTable;
  item: ItemTable;
  revision: RevisionTable;
  share: ShareTable;
}

export type Database = Kysely<Tables>;
export type Change = Transaction<Tables>;
