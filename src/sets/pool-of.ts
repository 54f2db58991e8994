import type { FastifyInstance } from 'fastify';
import { type NestingPool, nestingPool } from '../nesting/nesting-pool.ts';

const pools = new WeakMap<object, NestingPool>();

/** The one pool of nesting workers of a service, which ends with it; workers start when they are first needed. */
export function poolOf(app: Pick<FastifyInstance, 'server' | 'addHook'>): NestingPool {
  const known = pools.get(app.server);
  if (known) return known;
  const pool = nestingPool();
  pools.set(app.server, pool);
  app.addHook('onClose', () => pool.close());
  return pool;
}
