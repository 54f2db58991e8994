import { type Archive, createArchive } from './archive/archive.ts';
import type { Config } from './config.ts';
import { defaultMemberLimits, type MemberLimits, type Members } from './members/members.ts';
import { type Random, systemRandom } from './members/secrets.ts';
import { createMembers } from './members/sql-members.ts';
import { openRunner, type StoreOptions, storeOn } from './store/open-store.ts';
import type { Clock, Store } from './store/store.ts';

/** All that the service keeps, in one database: what users keep by name, who they are, and both as one file. */
export interface Records {
  readonly store: Store;
  readonly members: Members;
  readonly archive: Archive;
  /** Lets running calls end, then closes. Later calls are refused. */
  close(): Promise<void>;
}

export interface RecordsOptions extends StoreOptions {
  readonly memberLimits?: Partial<MemberLimits>;
  /** Where members' ids and secrets come from. */
  readonly random?: Random;
}

/** The records in the database that the settings name; nothing is opened or made before its first use. */
export function openRecords(
  config: Pick<Config, 'dataDir' | 'databaseUrl'>,
  clock: Clock,
  { memberLimits = {}, random = systemRandom, ...options }: RecordsOptions = {},
): Records {
  const runner = openRunner(config, options);
  const limits = Object.freeze({ ...defaultMemberLimits, ...memberLimits });
  return Object.freeze({
    store: storeOn(runner, clock, options),
    members: createMembers(runner, clock, { limits, random }),
    archive: createArchive(runner, clock),
    close: () => runner.close(),
  });
}
