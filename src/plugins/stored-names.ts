import type { FastifyRequest, preValidationAsyncHookHandler } from 'fastify';
import fp from 'fastify-plugin';
import { type FindKept, findOwn, findStarting } from '../resources/find-kept.ts';
import { replaceNames } from '../resources/replace-names.ts';
import type { SpeltSpec } from '../resources/spell-out.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** The spec of the request, if it named something that was put in its place. */
    spec?: SpeltSpec;
  }
  interface FastifyInstance {
    /** Looks up what the caller keeps; for a caller who is not known, the starting conventions alone. */
    readonly findKept: (request: Pick<FastifyRequest, 'caller'>) => FindKept;
    /** A hook for routes whose body is a spec: what the spec names of the caller's things is put in its place. */
    readonly replaceStoredNames: preValidationAsyncHookHandler;
  }
}

/** Lets specs name what their caller keeps. */
export default fp(
  async (app) => {
    app.decorate('findKept', ({ caller }) => (caller ? findOwn(app.store, caller.owner) : findStarting));
    app.decorate('replaceStoredNames', async (request: FastifyRequest) => {
      const sent = request.body;
      const spelt = await replaceNames(sent, app.findKept(request));
      if (spelt === sent) return;
      request.body = spelt;
      request.spec = { sent, spelt };
    });
  },
  { name: 'stored-names', dependencies: ['store', 'callers'] },
);
