/*
 * Takes the operations from number FROM on, without end, and says each number once its change is acknowledged:
 *
 *   DATA_DIR=… node tests/crash/writer.ts SEED FROM
 */
import { readConfig } from '../../src/config.ts';
import { openStore } from '../../src/store/open-store.ts';
import { takeStep } from '../src/store/store-model.ts';
import { operation } from './operations.ts';

const [seed = 0, from = 0] = process.argv.slice(2).map(Number);
const store = openStore(readConfig(process.env), () => new Date());
for (let number = from; ; number++) {
  const { outcome } = await takeStep(store, operation(seed, number));
  if (outcome === 'full') throw new Error('the operations fill the store: make them smaller');
  process.stdout.write(`${number}\n`); // a pipe, which Node writes at once
}
