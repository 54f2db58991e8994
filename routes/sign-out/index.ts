import formbody from '@fastify/formbody';
import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { requireGroup } from '../../src/members/member-problems.ts';
import { isSecret } from '../../src/members/secrets.ts';
import { noQuery } from '../../src/no-query.ts';
import { requireOwnOrigin } from '../../src/sign-in/require-caller.ts';
import { clearCookie, cookieOf } from '../../src/sign-in/session-cookie.ts';

/** The button of the sign-in page, so not in the contract. */
export default (async (app) => {
  await app.register(formbody, { bodyLimit: 4096 });
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      config: { needs: 'nothing' },
      preHandler: requireGroup,
      schema: { querystring: noQuery },
    },
    async (request, reply) => {
      requireOwnOrigin(request, 'cookie');
      const secret = cookieOf(request);
      if (secret !== undefined && isSecret(secret)) await app.members.signOut(secret);
      return clearCookie(reply).redirect('/sign-in', 303);
    },
  );
}) satisfies FastifyPluginAsync;
