import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { sendBuilt } from '../../../src/built-page.ts';
import { HttpProblem } from '../../../src/problem/http-problem.ts';

/** A name as the builder gives them: no folder, and nothing hidden. */
const params = z.strictObject({ file: z.string().regex(/^\w[\w-]*(?:\.[\w-]+)*\.[a-z0-9]+$/u) });

/** A worker has its own policy. Letters are set by WebAssembly, which is compiled, and that alone is allowed besides. */
const withWasm = (policy: string): string =>
  policy.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'");

/** What the page loads. A changed file has another name, so a copy is good for ever. */
export default (async (app) => {
  app
    .withTypeProvider<ZodTypeProvider>()
    .get('/', { config: { needs: 'nothing' }, schema: { params } }, async (request, reply) => {
      const { file } = request.params;
      if (file.endsWith('.js')) {
        const policy = reply.getHeader('content-security-policy');
        if (typeof policy === 'string') reply.header('content-security-policy', withWasm(policy));
      }
      if (!(await sendBuilt(request, reply, `assets/${file}`, 'public, max-age=31536000, immutable')))
        throw new HttpProblem(404, 'The page has no such file; load it again.');
      return reply;
    });
}) satisfies FastifyPluginAsync;
