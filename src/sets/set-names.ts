import type { FastifyInstance, FastifyRequest } from 'fastify';
import { replaceSetNames } from './replace-set-names.ts';

/** A `preValidation` hook for routes whose body is a set: what it names of the caller's things is put in its place. */
export const setNames =
  (app: Pick<FastifyInstance, 'findKept' | 'store'>) => async (request: FastifyRequest) => {
    const { caller } = request;
    request.body = await replaceSetNames(request.body, app.findKept(request), async (name) =>
      caller ? (await app.store.read(caller.owner, 'stock', name))?.body : undefined,
    );
  };
