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
      // a form's Origin is "null" under no-referrer, and plain http tells nothing else of where it came from
      referrerPolicy: { policy: 'same-origin' },
    });
  },
  { name: 'security-headers' },
);
