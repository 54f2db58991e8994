import type { FastifyRequest } from 'fastify';
import { isLoopback } from '../config.ts';
import { HttpProblem } from '../problem/http-problem.ts';

/** Names that only ever mean this machine; RFC 6761 section 6.3 keeps `.localhost` for it. */
const isThisMachine = (name: string): boolean => isLoopback(name) || name.endsWith('.localhost');

/**
 * Without sign-in the service must be asked by a name of this machine: a foreign page that gives its own name the
 * address of this machine would otherwise be a page of this service to the browser.
 * @throws {HttpProblem} 421, RFC 9110 section 15.5.20
 */
export function requireThisMachine({ headers }: FastifyRequest): void {
  const { host } = headers;
  if (host === undefined || isThisMachine(URL.parse(`http://${host}`)?.hostname ?? '')) return;
  throw new HttpProblem(
    421,
    'Without members this service answers only this machine, as localhost or 127.0.0.1.',
    [
      {
        path: '',
        message: 'the Host header names another machine',
        remedy: 'open it as http://127.0.0.1, or start it with GROUP=true so that its users sign in',
      },
    ],
  );
}
