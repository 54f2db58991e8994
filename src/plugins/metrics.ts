import fp from 'fastify-plugin';
import { processMetrics } from '../metrics/process-metrics.ts';
import { type ServiceMetrics, serviceMetrics } from '../metrics/service-metrics.ts';

declare module 'fastify' {
  interface FastifyInstance {
    readonly metrics: ServiceMetrics;
  }
}

/** Counts what is answered; `/metrics` shows it. */
export default fp(
  async (app) => {
    const metrics = serviceMetrics();
    app.decorate('metrics', metrics);
    app.addHook('onListen', async () => {
      processMetrics();
    });
    app.addHook('onResponse', async ({ method, routeOptions: { url } }, { statusCode, elapsedTime }) => {
      const route = url?.replace(/(?<=.)\/$/, ''); // with and without a slash at its end it is one route
      metrics.note({ method, route, status: statusCode, seconds: elapsedTime / 1000 });
    });
    app.addHook('onClose', async () => metrics.close());
  },
  { name: 'metrics' },
);
