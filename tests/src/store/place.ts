import type { Config } from '../../../src/config.ts';
import { openStore, type StoreOptions } from '../../../src/store/open-store.ts';
import type { Clock, Store } from '../../../src/store/store.ts';

/** A database of its own, on which several stores can be opened. */
export interface Place {
  /** Opens one more store on the database. */
  open(options?: StoreOptions & { readonly clock?: Clock }): Store;
  /** Makes every store that was opened close, and the database go. */
  discard(): Promise<void>;
}

/** A clock that goes one second further each time it is read. */
export function tickingClock(start = '2025-11-03T18:00:00.000Z'): Clock {
  let time = Date.parse(start);
  return () => {
    time += 1000;
    return new Date(time);
  };
}

/** @param drop removes the database itself */
export function placeAt(
  config: Pick<Config, 'dataDir' | 'databaseUrl'>,
  drop: () => Promise<unknown>,
): Place {
  const stores: Store[] = [];
  return {
    open({ clock = tickingClock(), ...options } = {}) {
      const store = openStore(config, clock, options);
      stores.push(store);
      return store;
    },
    async discard() {
      await Promise.all(stores.map((store) => store.close()));
      await drop();
    },
  };
}
