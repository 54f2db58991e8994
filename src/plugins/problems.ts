import type { FastifyRequest } from 'fastify';
import fp from 'fastify-plugin';
import { CannotBeFolded } from '../problem/cannot-be-folded.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import { sendProblem } from '../problem/send-problem.ts';

interface Route {
  readonly methods: readonly string[];
  readonly pattern: RegExp;
}

/** A route's URL as a pattern: `:name` is one segment, `*` is the rest. */
function urlPattern(url: string): RegExp {
  const source = url
    .split('/')
    .map((part) =>
      part === '*' ? '.*' : part.startsWith(':') ? '[^/]+' : part.replaceAll(/[.+?^${}()|[\]\\]/g, '\\$&'),
    )
    .join('/');
  return new RegExp(`^${source}$`);
}

function notFound(request: FastifyRequest, routes: readonly Route[]): HttpProblem {
  const [path = '/'] = request.url.split('?', 1);
  const methods = routes.filter(({ pattern }) => pattern.test(path)).flatMap((route) => route.methods);
  const allow = [...new Set(methods)].toSorted().join(', ');
  return allow === ''
    ? new HttpProblem(404, 'There is nothing at this URL; /docs lists what there is.')
    : new HttpProblem(405, `This URL answers ${allow}, not ${request.method}.`, [], { allow });
}

/** Every error leaves as RFC 9457 `application/problem+json`. */
export default fp(
  async (app) => {
    const routes: Route[] = [];
    app.addHook('onRoute', ({ method, url }) => {
      if (url !== '/*') routes.push({ methods: [method].flat(), pattern: urlPattern(url) });
    });
    app.setErrorHandler((error, { spec }, reply) =>
      sendProblem(reply, error instanceof CannotBeFolded ? error.forSpec(spec) : error),
    );
    // counted like any request, or guessing URLs would be free
    const counted = app.hasDecorator('rateLimit') ? { preHandler: app.rateLimit() } : {};
    app.setNotFoundHandler(counted, (request, reply) => sendProblem(reply, notFound(request, routes)));
  },
  { name: 'problems', dependencies: ['rate-limit'] },
);
