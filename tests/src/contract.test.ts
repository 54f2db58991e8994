import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { inOrder } from '../../src/contract/in-order.ts';
import { build } from './build.ts';
import { buildProbed } from './probe-app.ts';

interface Operation {
  readonly operationId?: string;
  readonly tags?: readonly string[];
  readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, unknown>> }>>;
}
type Paths = Readonly<Record<string, Readonly<Record<string, Operation>>>>;

const operations = (paths: Paths) =>
  Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
  );

describe('the contract', () => {
  test('is OpenAPI 3.1, served with the version of the package', async () => {
    const app = await build();
    const { openapi, info } = (await app.inject('/openapi.json')).json();
    expect(openapi).toBe('3.1.0');
    expect(info).toMatchObject({ title: 'hemfold', license: { identifier: 'MIT' } });
  });

  test('is the committed one; if not, look at what changed and run: npm run openapi', async () => {
    const app = await build();
    const committed = await readFile(new URL('../../openapi/openapi.json', import.meta.url), 'utf8');
    expect(`${JSON.stringify(app.contract(), null, 2)}\n`).toBe(committed);
  });

  test('has a name of its own for every operation, and a known tag', async () => {
    const app = await build();
    const { paths, tags } = (await app.inject('/openapi.json')).json();
    const all = operations(paths);
    const names = all.map(({ operation }) => operation.operationId);
    expect(names.length).toBeGreaterThan(2);
    expect(names).not.toContain(undefined);
    expect(new Set(names).size).toBe(names.length);
    const known = tags.map(({ name }: { name: string }) => name);
    for (const { path, operation } of all)
      expect(known, path).toEqual(expect.arrayContaining([...(operation.tags ?? ['none'])]));
  });

  test('declares every error reply as a problem', async () => {
    const app = await buildProbed();
    const { paths } = (await app.inject('/openapi.json')).json();
    const errors = operations(paths).flatMap(({ path, operation }) =>
      Object.entries(operation.responses)
        .filter(([status]) => Number(status) >= 400)
        .map(([status, reply]) => ({ place: `${path} ${status}`, types: Object.keys(reply.content ?? {}) })),
    );
    expect(errors.length).toBeGreaterThan(6);
    for (const { place, types } of errors) expect(types, place).toEqual(['application/problem+json']);
    expect(paths['/probe'].post.responses['422'].content['application/problem+json'].schema).toEqual({
      $ref: '#/components/schemas/CannotBeFolded',
    });
  });

  test('names its schemas, and keeps none that nothing refers to', async () => {
    const app = await buildProbed();
    const text = (await app.inject('/openapi.json')).body;
    const { schemas } = JSON.parse(text).components;
    expect(Object.keys(schemas)).toEqual(expect.arrayContaining(['Health', 'Problem', 'ProbeInput']));
    for (const name of Object.keys(schemas)) expect(text).toContain(`"#/components/schemas/${name}"`);
  });

  test('has no URL with a slash at its end', async () => {
    const app = await build();
    const { paths } = (await app.inject('/openapi.json')).json();
    expect(Object.keys(paths).filter((path) => path !== '/' && path.endsWith('/'))).toEqual([]);
  });
});

describe('inOrder', () => {
  const ref = (name: string) => ({ $ref: `#/components/schemas/${name}` });
  const document = {
    openapi: '3.1.0',
    paths: { '/b': ref('Used'), '/a': { readOnly: true, properties: { readOnly: { type: 'string' } } } },
    components: {
      schemas: { Used: { items: ref('Deep') }, Deep: { items: ref('Used') }, Unused: ref('Deep') },
    },
  };

  test('sorts paths and schemas, follows references round, and drops what is not reached', () => {
    const { paths, components } = inOrder(document) as { paths: object; components: { schemas: object } };
    expect(Object.keys(paths)).toEqual(['/a', '/b']);
    expect(Object.keys(components.schemas)).toEqual(['Deep', 'Used']);
  });

  test('drops the mark readOnly, but not a member of that name', () => {
    const { paths } = inOrder(document) as { paths: Record<string, object> };
    expect(paths['/a']).toEqual({ properties: { readOnly: { type: 'string' } } });
  });

  test('changes nothing when done again', () => {
    const once = inOrder(document);
    expect(JSON.stringify(inOrder(once))).toBe(JSON.stringify(once));
  });
});
