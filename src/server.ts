import type { FastifyInstance } from 'fastify';
import { buildApp } from './app.ts';
import type { Config } from './config.ts';

export interface RunningServer {
  /** Where the service answers, as a URL without a slash at its end. */
  readonly url: string;
  readonly app: FastifyInstance;
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

/**
 * Builds the service and listens.
 * @throws {CannotListen} with the reason and a remedy
 */
export async function startServer(config: Config): Promise<RunningServer> {
  const app = await buildApp(config);
  try {
    await app.listen({ host: config.host, port: config.port });
  } catch (error) {
    await app.close();
    const reason = reasons[(error as NodeJS.ErrnoException).code ?? ''];
    if (reason === undefined) throw error;
    throw new CannotListen(`Cannot listen on ${config.host} port ${config.port}: ${reason}.`);
  }
  const address = app.server.address();
  const port = typeof address === 'object' && address ? address.port : config.port;
  return { app, url: urlOf(config.host, port) };
}

/** A stop that takes longer than this is given up. */
const longestStopMs = 10_000;

/**
 * Stops on SIGINT or SIGTERM once the requests in hand are answered; a second signal stops at once.
 * @returns when it has stopped
 */
export function untilStopped(app: FastifyInstance): Promise<void> {
  const { promise, resolve, reject } = Promise.withResolvers<void>();
  const stop = (signal: NodeJS.Signals) => {
    process.once(signal, () => process.exit(1));
    app.log.info({ signal }, 'stopping');
    setTimeout(() => process.exit(1), longestStopMs).unref();
    app.close().then(resolve, reject);
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  return promise;
}
