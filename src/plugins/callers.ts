import cookie from '@fastify/cookie';
import type { FastifyRequest } from 'fastify';
import fp from 'fastify-plugin';
import type { PluginOptions } from '../app.ts';
import { type Caller, homeCaller, type Scope } from '../members/caller.ts';
import { countGuesses, type Guesses } from '../sign-in/guesses.ts';
import { type Identity, identityOf } from '../sign-in/identity.ts';
import { requireKnown, requireOwnOrigin, requireScope } from '../sign-in/require-caller.ts';
import { requireThisMachine } from '../sign-in/this-machine.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** Who asks. Only routes that anybody may call are reached without a known caller. */
    caller: Caller;
    identity: Identity | null;
  }
  interface FastifyInstance {
    readonly guesses: Guesses;
  }
  interface FastifyContextConfig {
    /** What a caller of this route must be allowed; default `read`. `nothing` lets anybody call it. */
    needs?: Scope | 'nothing';
  }
}

/** Pages that a package serves, whose routes say nothing of what they need. */
const publicPages = /^\/docs(?:\/|$)/;

function requireAllowed(request: FastifyRequest, identity: Identity): void {
  const { needs = 'read' } = request.routeOptions.config;
  if (needs === 'nothing') return;
  const caller = requireKnown(identity);
  requireScope(caller, needs);
  if (caller.proof?.by !== 'token') requireOwnOrigin(request, caller.proof ? 'cookie' : 'home');
}

/**
 * Says who asks, before the rate limit counts, and lets only those go on who may, after it. At home that is always
 * the one user. A route that says nothing of what it needs is for members alone.
 * @see https://github.com/fastify/fastify-cookie
 */
export default fp<PluginOptions>(
  async (app, { config, clock }) => {
    const home: Identity = { is: 'known', caller: homeCaller };
    const guesses = countGuesses(clock);
    app.decorate('guesses', guesses);
    app.decorateRequest('identity', null);
    app.decorateRequest('caller', {
      getter(this: FastifyRequest) {
        return (this.identity?.is === 'known' ? this.identity.caller : undefined) as Caller;
      },
    });
    app.addHook('onRoute', (route) => {
      if (publicPages.test(route.url)) route.config = { ...route.config, needs: 'nothing' };
    });
    await app.register(cookie);
    app.addHook('onRequest', async (request, reply) => {
      if (!config.group) requireThisMachine(request);
      request.identity = config.group
        ? await identityOf(request, reply, { members: app.members, guesses })
        : home;
    });
    app.addHook('preParsing', async (request) => {
      if (!request.is404) requireAllowed(request, request.identity ?? { is: 'unsaid' });
    });
  },
  { name: 'callers', dependencies: ['store', 'pressure'] },
);
