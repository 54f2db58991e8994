import helmet from '@fastify/helmet';
import fp from 'fastify-plugin';

/**
 * Headers that keep a browser from running or framing what this service did not send.
 * @see https://github.com/fastify/fastify-helmet
 */
export default fp(
  async (app) => {
    await app.register(helmet, {
      contentSecurityPolicy: {
        useDefaults: false,
        directives: {
          defaultSrc: ["'self'"],
          baseUri: ["'none'"],
          formAction: ["'self'"],
          frameAncestors: ["'none'"],
          imgSrc: ["'self'", 'data:', 'blob:'],
          objectSrc: ["'none'"],
          scriptSrc: ["'self'"],
          styleSrc: ["'self'"],
        },
      },
      // the proxy that ends TLS decides on this one; without TLS it would lock people out
      strictTransportSecurity: false,
      xFrameOptions: { action: 'deny' },
      referrerPolicy: { policy: 'no-referrer' },
    });
  },
  { name: 'security-headers' },
);
