import { openRecords, type Records, type RecordsOptions } from '../../../src/records.ts';
import { DatabaseUrl } from '../../../src/store/database-url.ts';
import type { Clock } from '../../../src/store/store.ts';
import { tickingClock } from '../store/place.ts';
import { postgresPlace } from '../store/postgres-place.ts';
import { sqlitePlace } from '../store/sqlite-place.ts';

/** A database of its own, on which the records can be opened more than once. */
export interface RecordsPlace {
  open(options?: RecordsOptions & { readonly clock?: Clock }): Records;
  /** Closes what was opened, and removes the database. */
  discard(): Promise<void>;
}

function recordsAt(config: Parameters<typeof openRecords>[0], discard: () => Promise<void>): RecordsPlace {
  const opened: Records[] = [];
  return {
    open({ clock = tickingClock(), ...options } = {}) {
      const records = openRecords(config, clock, options);
      opened.push(records);
      return records;
    },
    async discard() {
      await Promise.all(opened.map((records) => records.close()));
      await discard();
    },
  };
}

export async function sqliteRecords(): Promise<RecordsPlace & { readonly dataDir: string }> {
  const { dataDir, discard } = await sqlitePlace();
  return { ...recordsAt({ dataDir, databaseUrl: undefined }, discard), dataDir };
}

/** @param url of a database whose user may make others */
export async function postgresRecords(url: string): Promise<RecordsPlace & { readonly url: string }> {
  const place = await postgresPlace(url);
  const databaseUrl = DatabaseUrl.parse(place.url);
  return { ...recordsAt({ dataDir: '/nowhere', databaseUrl }, place.discard), url: place.url };
}
