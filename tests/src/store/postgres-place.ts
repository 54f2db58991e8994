import { randomBytes } from 'node:crypto';
import { Client } from 'pg';
import { DatabaseUrl } from '../../../src/store/database-url.ts';
import { type Place, placeAt } from './place.ts';

/** Runs one statement on a connection of its own. */
export async function runSql(url: string, text: string): Promise<readonly unknown[]> {
  const client = new Client({ connectionString: url });
  client.on('error', () => undefined); // the server may stop meanwhile
  await client.connect();
  try {
    return (await client.query(text)).rows;
  } finally {
    await client.end();
  }
}

/** The address of another database on the same server. */
function withDatabase(url: string, name: string): string {
  const other = new URL(url);
  other.pathname = `/${name}`;
  return other.href;
}

/**
 * A new database on a server.
 * @param url of a database whose user may make others
 */
export async function postgresPlace(url: string): Promise<Place & { readonly url: string }> {
  const name = `hemfold_test_${randomBytes(6).toString('hex')}`;
  await runSql(url, `create database ${name} template template0 encoding 'UTF8'`);
  const own = withDatabase(url, name);
  const databaseUrl = DatabaseUrl.parse(own);
  if (!databaseUrl) throw new Error('the address of the test database is not valid');
  const place = placeAt({ dataDir: '/nowhere', databaseUrl }, () =>
    runSql(url, `drop database ${name} with (force)`),
  );
  return { ...place, url: own };
}
