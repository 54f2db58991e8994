/*
 * Stores large things in DATA_DIR until that fails, then says as JSON how many were stored, how it failed and how
 * many can still be read. For tests that run it where there is little room.
 */
import { readConfig } from '../../../src/config.ts';
import { openStore } from '../../../src/store/open-store.ts';
import { StoreUnavailable } from '../../../src/store/store-errors.ts';

const store = openStore(readConfig(process.env), () => new Date());
let stored = 0;
let failure: unknown;
while (failure === undefined && stored < 100) {
  try {
    await store.put('her', 'stock', `paper ${stored}`, String(stored).repeat(20_000), 'any');
    stored++;
  } catch (error) {
    failure = error;
  }
}
let readable = 0;
while (await store.read('her', 'stock', `paper ${readable}`)) readable++;
const name = failure instanceof Error ? failure.name : String(failure);
const fault = failure instanceof StoreUnavailable ? failure.fault : undefined;
process.stdout.write(JSON.stringify({ stored, failure: name, fault, readable }));
