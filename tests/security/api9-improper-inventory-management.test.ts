/*
 * OWASP API Security Top 10 (2023), API9: what is served and what is documented are the same, to the last route.
 */
import { expect, test } from 'vitest';
import { build } from '../src/build.ts';
import { needs, pages } from './needs.ts';
import { type Route, routesOf } from './routes-of.ts';

interface Contract {
  readonly paths: Readonly<Record<string, Readonly<Record<string, object>>>>;
  readonly info: { readonly version: string };
}

const documented = ({ paths }: Contract): readonly Route[] =>
  Object.entries(paths)
    .flatMap(([path, item]) => Object.keys(item).map((method) => `${method.toUpperCase()} ${path}` as Route))
    .toSorted();

/** Routes of the app that are neither in the contract nor pages, and the other way round. */
function differences(routes: readonly Route[], contract: Contract) {
  const known = documented(contract);
  const served = routes.filter((route) => !route.startsWith('HEAD '));
  return {
    undocumented: served.filter((route) => !known.includes(route) && !pages.includes(route)),
    unserved: [...known, ...pages].filter((route) => !served.includes(route)),
  };
}

test.each([{}, { GROUP: 'true' }])(
  'every route is in the contract or a page, and every one of those is a route: %j',
  async (settings) => {
    const app = await build(settings);
    const contract = app.contract() as unknown as Contract;
    expect(documented(contract).length).toBeGreaterThan(40);
    expect(differences(routesOf(app), contract)).toEqual({ undocumented: [], unserved: [] });
  },
);

test('HEAD is there only where GET is', async () => {
  const routes = routesOf(await build());
  const heads = routes.filter((route) => route.startsWith('HEAD '));
  expect(heads.length).toBeGreaterThan(20);
  for (const route of heads) expect(routes).toContain(route.replace('HEAD', 'GET'));
});

test('there is one version of the API', async () => {
  const paths = routesOf(await build()).map((route) => route.split(' ')[1] ?? '');
  const versions = new Set(paths.flatMap((path) => /^\/(v\d+)\//.exec(path)?.[1] ?? []));
  expect([...versions]).toEqual(['v1']);
});

test('a route that nobody documented is seen, and a documented one that is not served', async () => {
  const app = await build({}, { extend: (bare) => void bare.get('/v1/backdoor', async () => 'open') });
  const contract = app.contract() as unknown as Contract;
  const more = { ...contract, paths: { ...contract.paths, '/v1/ghost': { get: {} } } };
  expect(differences(routesOf(app), more)).toEqual({
    undocumented: ['GET /v1/backdoor'],
    unserved: ['GET /v1/ghost'],
  });
});

test('every operation says who may call it', async () => {
  const { paths } = (await build()).contract() as unknown as Contract;
  for (const [route, need] of Object.entries(needs)) {
    const [method = '', path = ''] = route.split(' ');
    const operation = paths[path]?.[method.toLowerCase()] as { security?: object[]; responses: object };
    const known = need === 'nothing' ? [] : [{ bearer: [] }, { browser: [] }, {}];
    expect(operation.security, route).toEqual(known);
    if (need !== 'nothing')
      expect(Object.keys(operation.responses), route).toEqual(expect.arrayContaining(['401', '403']));
  }
});
