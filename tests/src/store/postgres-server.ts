import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { chownSync, globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** A PostgreSQL server of our own, reached by a socket in its folder alone. */
export interface PostgresServer {
  /** The address of its first database. */
  readonly url: string;
  start(): Promise<void>;
  /** Breaks all connections; what was committed stays. */
  stop(): Promise<void>;
  /** Stops it, and removes its data. */
  discard(): Promise<void>;
}

/** Where Debian's package `postgresql` has its programs, the newest version last. */
export const programFolders = () =>
  globSync('/usr/lib/postgresql/*/bin/initdb')
    .map(dirname)
    .toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true }));

/** The server refuses to run as root, so root lends it a user that may do nothing else. */
function serverUser(): { readonly uid: number; readonly gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const users = readFileSync('/etc/passwd', 'utf8').split('\n');
  const line =
    users.find((user) => user.startsWith('postgres:')) ?? users.find((user) => user.startsWith('nobody:'));
  const [, , uid, gid] = line?.split(':') ?? [];
  return uid === undefined || gid === undefined ? undefined : { uid: Number(uid), gid: Number(gid) };
}

const environment = { ...process.env, LC_ALL: 'C', LC_MESSAGES: 'C' };

/** Resolves when the server says that it is ready. */
function whenReady(server: ChildProcess): Promise<void> {
  return new Promise((resolve, reject) => {
    let said = '';
    server.stderr?.setEncoding('utf8').on('data', (part: string) => {
      said = (said + part).slice(-4000);
      if (said.includes('ready to accept connections')) resolve();
    });
    server.once('error', reject);
    server.once('exit', () => reject(new Error(`PostgreSQL ended: ${said}`)));
  });
}

/** Makes and starts a server; undefined where PostgreSQL is not installed. */
export async function startPostgres(): Promise<PostgresServer | undefined> {
  const programs = programFolders().at(-1);
  if (programs === undefined) return undefined;
  const user = serverUser();
  const folder = mkdtempSync('/tmp/hemfold-pg-'); // short, since the path of a socket is limited to 107 bytes
  if (user) chownSync(folder, user.uid, user.gid);
  const data = join(folder, 'data');
  const options = { cwd: folder, env: environment, ...user };
  const made = spawnSync(
    join(programs, 'initdb'),
    ['-D', data, '-U', 'keeper', '-A', 'trust', '-E', 'UTF8', '--locale=C', '--no-sync', '--no-instructions'],
    { ...options, encoding: 'utf8' },
  );
  if (made.status !== 0) throw new Error(`initdb failed: ${made.stderr}`);

  let server: ChildProcess | undefined;
  const killAtExit = () => server?.kill('SIGQUIT');
  process.once('exit', killAtExit);

  const settings = [`unix_socket_directories=${folder}`, 'listen_addresses=', 'fsync=off'];
  async function start(): Promise<void> {
    server = spawn(
      join(programs ?? '', 'postgres'),
      ['-D', data, ...settings.flatMap((setting) => ['-c', setting])],
      {
        ...options,
        stdio: ['ignore', 'ignore', 'pipe'],
      },
    );
    await whenReady(server);
  }
  async function stop(): Promise<void> {
    const running = server;
    server = undefined;
    if (!running || running.exitCode !== null) return;
    const ended = new Promise((resolve) => running.once('exit', resolve));
    running.kill('SIGINT'); // fast shutdown, PostgreSQL documentation section 19.5
    await ended;
  }
  await start();
  return {
    url: `postgresql:///postgres?host=${encodeURIComponent(folder)}&user=keeper`,
    start,
    stop,
    async discard() {
      await stop();
      process.off('exit', killAtExit);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
