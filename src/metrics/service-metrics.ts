import { Counter, Gauge, Histogram, Registry } from 'prom-client';
import { hemfoldVersion } from '../version.ts';
import { processMetrics } from './process-metrics.ts';
import { plans, storeWork } from './topics.ts';

/** One answered request. */
export interface Answered {
  readonly method: string;
  /** The pattern of its route, such as `/v1/stock/:name`; undefined for a URL that has none. */
  readonly route: string | undefined;
  readonly status: number;
  readonly seconds: number;
}

export interface ServiceMetrics {
  readonly note: (request: Answered) => void;
  /** Everything in the Prometheus text format, version 0.0.4. */
  readonly text: () => Promise<string>;
  readonly close: () => void;
}

/** The media type of {@link ServiceMetrics.text}. */
export const metricsMediaType = Registry.PROMETHEUS_CONTENT_TYPE;

/** Upper bounds in seconds: a plan takes about a millisecond, a hard search up to a second. */
const requestBounds = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10];
const storeBounds = [0.001, 0.005, 0.025, 0.1, 0.5, 2, 5];

/** A caller may invent methods; only these have a series of their own. */
const methods: ReadonlySet<string> = new Set(['DELETE', 'GET', 'HEAD', 'OPTIONS', 'PATCH', 'POST', 'PUT']);

/**
 * What the service counts. A label's value is never a caller's own text, so callers cannot make series.
 * @see https://prometheus.io/docs/instrumenting/exposition_formats/
 */
export function serviceMetrics(): ServiceMetrics {
  const registry = new Registry();
  const registers = [registry];
  new Gauge({
    name: 'hemfold_build_info',
    help: 'The version that runs; always 1.',
    labelNames: ['version'],
    registers,
  }).set({ version: hemfoldVersion }, 1);
  const requests = new Histogram({
    name: 'http_request_duration_seconds',
    help: 'Time to answer a request, by the pattern of its route; "none" for a URL without a route.',
    labelNames: ['method', 'route', 'status'],
    buckets: requestBounds,
    registers,
  });
  const planned = new Counter({
    name: 'hemfold_plans_total',
    help: 'Specs that were solved and proved, or refused because nothing fits; repeated requests are not solved again.',
    labelNames: ['style', 'outcome'],
    registers,
  });
  const stored = new Histogram({
    name: 'hemfold_store_operation_duration_seconds',
    help: 'Time of one piece of work on the store, and whether it was done or what kept it from being done.',
    labelNames: ['operation', 'outcome'],
    buckets: storeBounds,
    registers,
  });
  const endings = [
    plans.listen(({ style, outcome }) => planned.inc({ style, outcome })),
    storeWork.listen(({ operation, outcome, seconds }) => stored.observe({ operation, outcome }, seconds)),
  ];
  return Object.freeze<ServiceMetrics>({
    note: ({ method, route, status, seconds }) =>
      requests.observe(
        { method: methods.has(method) ? method : 'other', route: route ?? 'none', status },
        seconds,
      ),
    text: async () => `${await registry.metrics()}\n${await processMetrics().metrics()}`,
    close: () => {
      for (const end of endings) end();
    },
  });
}
