import type { FastifyRequest } from 'fastify';
import fp from 'fastify-plugin';
import { readJson } from '../problem/read-json.ts';

/** The only bodies that are read are JSON; every other media type is answered with 415. */
export default fp(
  async (app) => {
    app.removeAllContentTypeParsers();
    app.addContentTypeParser(
      'application/json',
      { parseAs: 'buffer' },
      async (request: FastifyRequest, body: Buffer) => (request.is404 ? undefined : readJson(body)),
    );
  },
  { name: 'json-bodies' },
);
