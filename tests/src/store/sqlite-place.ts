import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sqliteFileName } from '../../../src/store/open-store.ts';
import { type Place, placeAt } from './place.ts';

/** A SQLite file in a new folder. */
export async function sqlitePlace(): Promise<
  Place & { readonly folder: string; readonly dataDir: string; readonly file: string }
> {
  const folder = await mkdtemp(join(tmpdir(), 'hemfold-store-'));
  const dataDir = join(folder, 'made', 'data');
  const place = placeAt({ dataDir, databaseUrl: undefined }, () =>
    rm(folder, { recursive: true, force: true }),
  );
  return { ...place, folder, dataDir, file: join(dataDir, sqliteFileName) };
}
