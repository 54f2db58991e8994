import fp from 'fastify-plugin';
import type { PluginOptions } from '../app.ts';
import type { Archive } from '../archive/archive.ts';
import type { Members } from '../members/members.ts';
import type { Clock, Store } from '../store/store.ts';

declare module 'fastify' {
  interface FastifyInstance {
    /** What users keep; opened when it is first used. */
    readonly store: Store;
    /** Who they are, and what they show to be known. */
    readonly members: Members;
    /** Both as one file. */
    readonly archive: Archive;
    readonly clock: Clock;
  }
}

/** The records that the settings name, closed with the service. */
export default fp<PluginOptions>(
  async (app, { records, clock }) => {
    app.decorate('store', records.store);
    app.decorate('members', records.members);
    app.decorate('archive', records.archive);
    app.decorate('clock', clock);
    app.addHook('onClose', async () => {
      await records.store.close();
      await records.close();
    });
  },
  { name: 'store' },
);
