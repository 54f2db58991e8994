import type { Config } from '../config.ts';
import type { Store } from './store.ts';
import { IncompatibleStore, type StoreFault, StoreUnavailable } from './store-errors.ts';

/** Thrown when the store cannot be used until its keeper does something; the message is ready for a terminal. */
export class CannotUseStore extends Error {
  override readonly name = 'CannotUseStore';
}

type Place = Pick<Config, 'dataDir' | 'databaseUrl'>;

const full = 'its disk is full';

/** Why a file in DATA_DIR cannot be used, by the system's code. */
const fileReasons: Readonly<Record<string, string>> = {
  EACCES: 'this user may not read or write there',
  EDQUOT: full,
  EEXIST: 'a file has that name, where a folder must be',
  ENOSPC: full,
  ENOTDIR: 'a part of the path is a file, not a folder',
  EPERM: 'this user may not read or write there',
  EROFS: 'its file system can only be read',
};

/** The same by SQLite's primary result code, sqlite.org/rescode.html. */
const sqliteReasons: Readonly<Record<number, string>> = {
  8: 'the database file in it, or the folder itself, can only be read',
  11: 'the database file in it is damaged; bring back a copy',
  13: full,
  14: 'the database file in it cannot be opened',
  26: 'the database file in it was not written by hemfold',
};

/** What only its keeper can mend, by SQLSTATE or its class: PostgreSQL documentation, appendix A. */
const databaseReasons: Readonly<Record<string, string>> = {
  '28': 'it does not let this user in; look at the user name and the password',
  '3D': 'there is no database of that name',
  '25006': 'it can only be read, as a standby can',
  '42501': 'this user may not make or change its tables',
  '53100': full,
};

/** Faults that pass by themselves, as that of a database that starts later than the service. */
const passing: ReadonlySet<StoreFault> = new Set(['busy', 'unreachable']);

function reasonOf({ fault, cause }: StoreUnavailable, inFile: boolean): string | undefined {
  const { code, errcode } = (cause ?? {}) as { readonly code?: unknown; readonly errcode?: unknown };
  const text = String(code);
  const known = inFile
    ? (sqliteReasons[Number(errcode) & 0xff] ?? fileReasons[text])
    : (databaseReasons[text] ?? databaseReasons[text.slice(0, 2)]);
  return known ?? (passing.has(fault) ? undefined : 'it cannot be read or written');
}

/** What an error of the store tells its keeper to do; undefined for a fault that may pass, and for any other error. */
export function keepersTask(error: unknown, { dataDir, databaseUrl }: Place): string | undefined {
  const [place, remedy] = databaseUrl
    ? ['the database at DATABASE_URL', 'Mend that, or choose another with DATABASE_URL.']
    : [`the folder ${dataDir}`, 'Mend that, or choose another with DATA_DIR.'];
  if (error instanceof IncompatibleStore) return `Cannot use ${place}. ${error.message}`;
  if (!(error instanceof StoreUnavailable)) return undefined;
  const reason = reasonOf(error, databaseUrl === undefined);
  return reason && `Cannot use ${place}: ${reason}. ${remedy}`;
}

/**
 * Opens the store, so that not the first user meets what keeps it closed.
 * @returns the fault if it may pass by itself
 * @throws {CannotUseStore} if its keeper must act
 */
export async function openAtStart(
  store: Pick<Store, 'ready'>,
  place: Place,
): Promise<StoreUnavailable | undefined> {
  try {
    await store.ready();
    return undefined;
  } catch (error) {
    const task = keepersTask(error, place);
    if (task !== undefined) throw new CannotUseStore(task, { cause: error });
    if (error instanceof StoreUnavailable) return error;
    throw error;
  }
}
