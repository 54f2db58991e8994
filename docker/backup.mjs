// node backup.mjs FILE: writes a whole copy of the SQLite store, also while the service writes to it.
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';

const [, , target, ...more] = process.argv;
if (target === undefined || more.length > 0) {
  process.stderr.write('usage: node backup.mjs FILE\n');
  process.exit(2);
}
const source = join(process.env.DATA_DIR ?? './data', 'hemfold.sqlite');
try {
  statSync(source); // opening would make an empty one
  const store = new DatabaseSync(source, { timeout: 5_000 });
  // one transaction sees one moment; SQLite refuses a target that holds anything
  store.prepare('VACUUM INTO ?').run(target);
  store.close();
} catch (error) {
  process.stderr.write(`Nothing was copied: ${error instanceof Error ? error.message : error}\n`);
  process.exitCode = 1;
}
