import type { FastifyInstance } from 'fastify';
import { buildApp } from './app.ts';
import type { Config } from './config.ts';
import { requireKeeper } from './members/require-keeper.ts';
import { openAtStart } from './store/open-at-start.ts';

export interface RunningServer {
  /** Where the service answers, as a URL without a slash at its end. */
  readonly url: string;
  readonly app: FastifyInstance;
  /** What it still waits for, ready for a terminal; absent if it is ready. */
  readonly waitsFor?: string;
}

/** Thrown when the address cannot be listened on; the message is ready for a terminal. */
export class CannotListen extends Error {
  override readonly name = 'CannotListen';
}

const reasons: Readonly<Record<string, string>> = {
  EACCES:
    'this user may not open it; ports below 1024 are often reserved. Choose another with --port or PORT',
  EADDRINUSE: 'something else is listening there. Stop that, or choose another with --port or PORT',
  EADDRNOTAVAIL: 'this machine does not have that address. Choose another with --host or HOST',
  ENOTFOUND: 'that host name is not known. Choose another with --host or HOST',
};

/** A wildcard address is not one that a browser can open. */
const reachable = (host: string) => (host === '0.0.0.0' || host === '::' ? 'localhost' : host);

export function urlOf(host: string, port: number): string {
  const name = reachable(host);
  return `http://${name.includes(':') ? `[${name}]` : name}:${port}`;
}

const waiting = 'Its store cannot be used yet: /health answers 503 until it can. The log says why.';

async function listen(app: FastifyInstance, { host, port }: Config): Promise<void> {
  try {
    await app.listen({ host, port });
  } catch (error) {
    const reason = reasons[(error as NodeJS.ErrnoException).code ?? ''];
    if (reason === undefined) throw error;
    throw new CannotListen(`Cannot listen on ${host} port ${port}: ${reason}.`);
  }
}

/**
 * Builds the service, opens its store and listens. While a database cannot be reached it starts all the same: it is
 * not ready then, and what needs no store is answered.
 * @throws {CannotListen} @throws {CannotUseStore} @throws {NobodyKeepsGroup} with the reason and a remedy
 */
export async function startServer(config: Config): Promise<RunningServer> {
  const app = await buildApp(config);
  try {
    const fault = await openAtStart(app.store, config);
    if (fault) app.log.warn({ err: fault }, 'the store cannot be used yet');
    if (!fault) await requireKeeper(config, app.members);
    await listen(app, config);
    const address = app.server.address();
    const port = typeof address === 'object' && address ? address.port : config.port;
    return { app, url: urlOf(config.host, port), ...(fault ? { waitsFor: waiting } : {}) };
  } catch (error) {
    await app.close();
    throw error;
  }
}

/** Requests that are not over by then are cut off, so that a caller who never finishes one cannot hold up the stop. */
const longestRequestMs = 8_000;

/** A stop that takes longer than this is given up. */
const longestStopMs = 10_000;

/** How often to look whether the npm that started this service is still there. */
const parentCheckMs = 500;

/** Who started this process; read before the service says that it runs, since from then on that one may go. */
const parentAtStart = process.ppid;

/**
 * npm starts scripts through a shell, which does not pass on the signal that ends npm. So a service started by npm
 * stops once its parent is gone, rather than keep the port.
 */
function onOrphaned(stop: () => void): void {
  if (process.env.npm_lifecycle_event === undefined) return;
  const timer = setInterval(() => {
    if (process.ppid === parentAtStart) return;
    clearInterval(timer);
    stop();
  }, parentCheckMs);
  timer.unref();
}

/** One Ctrl+C may arrive twice, from the terminal and from npm; only a later signal means "at once". */
const sameSignalMs = 1_000;

/**
 * Stops on SIGINT or SIGTERM once the requests in hand are answered; a second signal stops at once.
 * @returns when it has stopped
 */
export function untilStopped(app: FastifyInstance): Promise<void> {
  const { promise, resolve, reject } = Promise.withResolvers<void>();
  let stoppingSinceMs: number | undefined;
  const stop = (reason: string) => {
    if (stoppingSinceMs !== undefined) return;
    stoppingSinceMs = performance.now();
    app.log.info({ reason }, 'stopping');
    setTimeout(() => app.server.closeAllConnections(), longestRequestMs).unref();
    setTimeout(() => process.exit(1), longestStopMs).unref();
    app.close().then(resolve, reject);
  };
  const onSignal = (signal: string) => {
    if (stoppingSinceMs !== undefined && performance.now() - stoppingSinceMs > sameSignalMs) process.exit(1);
    stop(signal);
  };
  process.on('SIGINT', onSignal);
  process.on('SIGTERM', onSignal);
  onOrphaned(() => stop('npm has ended'));
  return promise;
}
