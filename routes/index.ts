import type { FastifyPluginAsync } from 'fastify';
import { sendBuilt } from '../src/built-page.ts';
import { HttpProblem } from '../src/problem/http-problem.ts';

/** The maker's page. It asks every time whether it is still the newest; what it loads has its content in its name. */
export default (async (app) => {
  app.get('/', { config: { needs: 'nothing' } }, async (request, reply) => {
    if (!(await sendBuilt(request, reply, 'index.html', 'no-cache')))
      throw new HttpProblem(
        404,
        'The page was not built here; `npm run page` builds it. The API is at /docs.',
      );
    return reply;
  });
}) satisfies FastifyPluginAsync;
