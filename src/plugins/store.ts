import fp from 'fastify-plugin';
import type { PluginOptions } from '../app.ts';
import type { Clock, Store } from '../store/store.ts';

declare module 'fastify' {
  interface FastifyInstance {
    /** What users keep; opened when it is first used. */
    readonly store: Store;
    readonly clock: Clock;
  }
}

/** The store that the settings name, closed with the service. */
export default fp<PluginOptions>(
  async (app, { store, clock }) => {
    app.decorate('store', store);
    app.decorate('clock', clock);
    app.addHook('onClose', () => store.close());
  },
  { name: 'store' },
);
