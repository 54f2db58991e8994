import { fileURLToPath } from 'node:url';
import { getHeapStatistics } from 'node:v8';
import autoload from '@fastify/autoload';
import Fastify, { type FastifyInstance } from 'fastify';
import type { Config } from './config.ts';
import { answerBrokenConnection } from './problem/broken-connection.ts';
import { sendProblem } from './problem/send-problem.ts';
import { openRecords, type Records } from './records.ts';
import type { Clock } from './store/store.ts';
import { withoutSecrets } from './without-secrets.ts';

declare module 'fastify' {
  interface FastifyInstance {
    readonly config: Config;
  }
}

export interface AppOptions {
  /** Refuse work with 503 while the process is overloaded; default true. Tests that load the process switch it off. */
  readonly refuseUnderPressure?: boolean;
  /** Heap in use, in bytes, above which the process counts as overloaded; default nine tenths of its limit. */
  readonly mostHeapBytes?: number;
  /** Called before the plugins and routes load, so that tests can add routes of their own. */
  readonly extend?: (app: FastifyInstance) => void | Promise<void>;
  /** The current time; default the machine's. */
  readonly clock?: Clock;
  /** Where everything is kept; default what the settings name. */
  readonly records?: Records;
  /** Where log lines go; default standard output. */
  readonly logStream?: { write(line: string): void };
}

/** What every plugin in `src/plugins` is given. */
export interface PluginOptions {
  readonly config: Config;
  readonly refuseUnderPressure: boolean;
  readonly mostHeapBytes: number;
  readonly clock: Clock;
  readonly records: Records;
}

const folder = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));

/** A spec is a few hundred bytes; a set with many knockouts stays far below this. */
const bodyLimitBytes = 256 * 1024;

/** The log says who asked for what, never what they sent: no bodies, no headers. */
const logOptions = (config: Config, stream: AppOptions['logStream']) => ({
  level: config.logLevel,
  ...(stream ? { stream } : {}),
  redact: ['req.headers', 'headers.authorization', 'headers.cookie', 'err.input'],
  serializers: {
    req: (request: { method: string; url: string; ip?: string }) => ({
      method: request.method,
      url: withoutSecrets(request.url),
      ip: request.ip,
    }),
  },
});

/** A number trusts that many proxies, counted from this service outwards. */
function trustedProxies(trust: Config['trustProxy']) {
  if (typeof trust === 'number') return (_address: string, hop: number) => hop < trust;
  return typeof trust === 'boolean' ? trust : [...trust];
}

/**
 * Stands for the framework's own compilers of JSON Schema, which are then never loaded: the schemas plugin brings those
 * that are used.
 */
function noCompiler(): never {
  throw new Error('the schemas plugin is not there');
}

/**
 * The whole service, ready but not listening: plugins first, then the routes, whose URLs are their folders.
 * The same from source and compiled, since both folders are found from this file.
 */
export async function buildApp(config: Config, options: AppOptions = {}): Promise<FastifyInstance> {
  const clock = options.clock ?? (() => new Date());
  const records = options.records ?? openRecords(config, clock);
  const app = Fastify({
    logger: logOptions(config, options.logStream),
    trustProxy: trustedProxies(config.trustProxy),
    bodyLimit: bodyLimitBytes,
    schemaController: { compilersFactory: { buildValidator: noCompiler, buildSerializer: noCompiler } },
    pluginTimeout: 60_000, // ms for a part of the program to load, on a small machine that is busy
    requestTimeout: 15_000, // ms for a whole request to arrive
    connectionTimeout: 125_000, // ms without any traffic, longer than any answer takes and than docker/haproxy.cfg waits
    keepAliveTimeout: 10_000, // ms between requests
    return503OnClosing: false, // requests that had already arrived are still answered
    routerOptions: { maxParamLength: 200 },
    frameworkErrors: (error, _request, reply) => sendProblem(reply, error),
    clientErrorHandler: answerBrokenConnection,
  });
  app.decorate('config', config);
  await app.register(autoload, {
    dir: folder('./plugins'),
    options: {
      config,
      refuseUnderPressure: options.refuseUnderPressure ?? true,
      mostHeapBytes: options.mostHeapBytes ?? Math.floor(getHeapStatistics().heap_size_limit * 0.9),
      clock,
      records,
    } satisfies PluginOptions,
  });
  await options.extend?.(app);
  await app.register(autoload, { dir: folder('../routes'), routeParams: true });
  await app.ready();
  return app;
}
