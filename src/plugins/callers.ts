import fp from 'fastify-plugin';
import { type Caller, homeCaller, type Scope } from '../members/caller.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** Who asks. Only routes that anybody may call are reached without a known caller. */
    caller: Caller;
  }
  interface FastifyContextConfig {
    /** What a caller of this route must be allowed; default `read`. `nothing` lets anybody call it. */
    needs?: Scope | 'nothing';
  }
}

/** Says who asks. At home that is always the one user. */
export default fp(
  async (app) => {
    app.decorateRequest('caller', { getter: () => homeCaller });
  },
  { name: 'callers', dependencies: ['store'] },
);
