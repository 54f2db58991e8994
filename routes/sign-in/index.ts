import formbody from '@fastify/formbody';
import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { requireGroup } from '../../src/members/member-problems.ts';
import { noQuery } from '../../src/no-query.ts';
import { sendPage } from '../../src/sign-in/html.ts';
import { signedInPage, signInPage } from '../../src/sign-in/page.ts';
import { requireOwnOrigin } from '../../src/sign-in/require-caller.ts';
import { setCookie } from '../../src/sign-in/session-cookie.ts';
import { signIn } from '../../src/sign-in/sign-in.ts';

/** Far above a token, so that a slip is answered by the page. */
const form = z.strictObject({ token: z.string().max(2000) });

/** Successful sign-ins are limited, too: each is written to the audit log. */
const mostSignIns = { max: 20, timeWindow: '1 minute' } as const;

/**
 * A page for people, so not in the contract: a member pastes a token, and the browser gets a cookie.
 * @see https://github.com/fastify/fastify-formbody
 */
export default (async (app) => {
  await app.register(formbody, { bodyLimit: 4096 });
  const routes = app.withTypeProvider<ZodTypeProvider>();

  routes.get(
    '/',
    { config: { needs: 'nothing' }, preHandler: requireGroup, schema: { querystring: noQuery } },
    async ({ caller }, reply) => sendPage(reply, caller ? signedInPage(caller) : signInPage()),
  );

  routes.post(
    '/',
    {
      config: { needs: 'nothing', rateLimit: mostSignIns },
      preHandler: requireGroup,
      schema: { querystring: noQuery, body: form },
    },
    async (request, reply) => {
      requireOwnOrigin(request, 'cookie');
      const outcome = await signIn(request, request.body.token, app);
      if ('trouble' in outcome)
        return sendPage(reply.code(outcome.status).headers(outcome.headers), signInPage(outcome.trouble));
      return setCookie(reply, outcome.secret, outcome.expires).redirect('/sign-in', 303);
    },
  );
}) satisfies FastifyPluginAsync;
