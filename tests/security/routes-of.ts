import type { FastifyInstance } from 'fastify';

/** A method at a URL, as in `GET /v1/stock/{name}`; without a slash at the end. */
export type Route = `${string} /${string}`;

const line = /^((?:[│ ] {3})*)[├└]── (.+) \(([A-Z, ]+)\)$/u;

/** Every route that the router of an app knows, from its own drawing of its tree. */
export function routesOf(app: FastifyInstance): readonly Route[] {
  const path: string[] = [];
  const found = new Set<Route>();
  for (const row of app.printRoutes({ commonPrefix: false }).split('\n')) {
    const [, indent, part, methods] = line.exec(row) ?? [];
    if (indent === undefined || part === undefined || methods === undefined) continue;
    path.length = indent.length / 4;
    path.push(part);
    const url = path
      .join('')
      .replace(/(?<=.)\/$/, '')
      .replace(/:(\w+)/g, '{$1}');
    for (const method of methods.split(', ')) found.add(`${method} ${url}` as Route);
  }
  return [...found].toSorted();
}

const samples: Readonly<Record<string, string>> = {
  '{id}': '0'.repeat(20),
  '{secret}': 'a'.repeat(43),
  '{version}': '1',
  '{file}': 'none.js',
  '*': 'none.js',
};

/** A request for a route, with something at the place of each parameter. */
export function requestFor(route: Route): { readonly method: string; readonly url: string } {
  const [method = '', pattern = ''] = route.split(' ');
  return { method, url: pattern.replace(/\{\w+\}|\*/g, (part) => samples[part] ?? 'thing') };
}
