import { collectDefaultMetrics, Registry } from 'prom-client';

/** How often the delay of the event loop is looked at, in ms. */
const precisionMs = 100;

let registry: Registry | undefined;

/** Processor, memory, event loop and garbage collection of this process; observed from the first call on. */
export function processMetrics(): Registry {
  if (registry) return registry;
  registry = new Registry();
  collectDefaultMetrics({ register: registry, eventLoopMonitoringPrecision: precisionMs });
  return registry;
}
