import fp from 'fastify-plugin';
import { releaseMemory } from '../quiet/release-memory.ts';
import { type Watch, watchQuiet } from '../quiet/watch-quiet.ts';

/** Routes that are asked again and again while nobody works. */
const probes = /^\/(?:health|metrics)(?:\/|$)/u;

/** Gives memory back after the start, and each time that nobody has asked for anything for a minute. */
export default fp(
  async (app) => {
    let watch: Watch | undefined;
    const release = () => {
      releaseMemory().catch((error: unknown) => app.log.warn({ err: error }, 'memory was not given back'));
    };
    app.addHook('onListen', async () => {
      watch ??= watchQuiet(release);
    });
    app.addHook('onResponse', async ({ routeOptions: { url } }) => {
      if (!probes.test(url ?? '')) watch?.note();
    });
    app.addHook('onClose', async () => watch?.stop());
  },
  { name: 'quiet' },
);
