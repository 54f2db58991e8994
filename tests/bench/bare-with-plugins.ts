import etag from '@fastify/etag';
import helmet from '@fastify/helmet';
import rateLimit from '@fastify/rate-limit';
import swagger from '@fastify/swagger';
import swaggerUi from '@fastify/swagger-ui';
import underPressure from '@fastify/under-pressure';
import Fastify from 'fastify';
import {
  jsonSchemaTransform,
  jsonSchemaTransformObject,
  serializerCompiler,
  validatorCompiler,
} from 'fastify-type-provider-zod';
import { z } from 'zod';

/** The plugins of the service, and one route that does nothing: what its memory is compared with. */
export async function bareWithPlugins() {
  const app = Fastify();
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  await app.register(helmet);
  await app.register(rateLimit, { max: 1_000_000, timeWindow: '1 minute' });
  await app.register(etag, { algorithm: 'sha256', replyWith304: false });
  await app.register(underPressure, { maxEventLoopDelay: 60_000 });
  await app.register(swagger, {
    openapi: { openapi: '3.1.0', info: { title: 'echo', version: '1' } },
    transform: jsonSchemaTransform,
    transformObject: jsonSchemaTransformObject,
  });
  await app.register(swaggerUi, { routePrefix: '/docs' });
  const anything = z.looseObject({});
  app.post('/echo', { schema: { body: anything, response: { 200: anything } } }, async ({ body }) => body);
  return app;
}
