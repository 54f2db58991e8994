import { writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { describeReplies } from '../../src/contract/describe-replies.ts';
import { excerpt } from '../../src/contract/excerpt.ts';
import { inOrder } from '../../src/contract/in-order.ts';
import { filledUrl, runExamples } from '../../src/contract/run-examples.ts';
import { withoutSingleChoices } from '../../src/contract/single-choices.ts';
import { withExamples } from '../../src/contract/with-examples.ts';
import { build } from './build.ts';
import { committedContract } from './contract-document.ts';
import { buildProbed } from './probe-app.ts';
import { start } from './run-program.ts';
import { tempFolder } from './temp-folder.ts';

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
    expect(`${JSON.stringify(app.contract(), null, 2)}\n`).toBe(await committedContract());
  });

  test('is what the pages at /docs show', async () => {
    const app = await build();
    expect((await app.inject('/docs/json')).json()).toEqual((await app.inject('/openapi.json')).json());
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

describe('the linter', () => {
  const program = createRequire(import.meta.url).resolve('@redocly/cli/bin/cli.js');

  /** What an independent linter finds, with its warnings taken for errors. */
  async function lint(text: string) {
    const folder = await tempFolder();
    await writeFile(join(folder, 'openapi.json'), text);
    const words = ['lint', 'openapi.json', '--extends=recommended-strict', '--format=json'];
    const run = start(process.execPath, [program, ...words], {
      cwd: folder,
      env: { REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' },
    });
    const code = await run.ended;
    const problems = (JSON.parse(run.output()).problems ?? []) as readonly { readonly ruleId: string }[];
    return { code, rules: problems.map(({ ruleId }) => ruleId) };
  }

  test('has nothing to say about the committed document', async () => {
    expect(await lint(await committedContract())).toEqual({ code: 0, rules: [] });
  });

  test('sees a reference to nothing, an example that breaks its schema, and a name that is used twice', async () => {
    const document = JSON.parse(await committedContract());
    const { post } = document.paths['/v1/folders/plan'];
    post.operationId = 'drawFolder';
    post.requestBody.content['application/json'].examples['known-by-heart'].value.style = 'flat';
    document.components.schemas.Plan.properties.blank.$ref = '#/components/schemas/Nothing';
    const { code, rules } = await lint(JSON.stringify(document));
    expect(code).toBe(1);
    expect(rules).toEqual(
      expect.arrayContaining([
        'no-unresolved-refs',
        'no-invalid-media-type-examples',
        'operation-operationId-unique',
      ]),
    );
  });
});

describe('the examples', () => {
  const operation = {
    operationId: 'askTide',
    summary: 'The tide',
    parameters: [{ name: 'port', in: 'path' }],
    requestBody: { content: { 'application/json': { schema: {} } } },
    responses: { 200: { content: { 'text/plain': {} } }, 422: { content: { 'text/plain': {} } } },
  };
  const document = { openapi: '3.1.0', paths: { '/tide/{port}': { post: operation } } };
  const low = { name: 'low', summary: 'At noon', body: { at: 12 }, parameters: { port: 'north' } };
  const answer = { status: 200, mediaType: 'text/plain', value: 'low' };
  const noon = (value: unknown) => ({ low: { summary: 'At noon', value } });

  test('stand beside the body, the parameter and the reply that they got', () => {
    const { paths } = withExamples(document, { askTide: [low] }, { askTide: { low: answer } });
    expect(paths).toEqual({
      '/tide/{port}': {
        post: {
          ...operation,
          parameters: [{ name: 'port', in: 'path', examples: noon('north') }],
          requestBody: { content: { 'application/json': { schema: {}, examples: noon({ at: 12 }) } } },
          responses: {
            200: { content: { 'text/plain': { examples: noon('low') } } },
            422: { content: { 'text/plain': {} } },
          },
        },
      },
    });
  });

  test('change nothing where there are none', () => {
    expect(withExamples(document, { askMoon: [low] }, {})).toEqual(document);
  });

  test('put parameters where they belong: into the path, and others into the query', () => {
    expect(filledUrl('/tide/{port}/{day}', { port: 'a/b', day: '1', view: 'x y' })).toBe(
      '/tide/a%2Fb/1?view=x+y',
    );
    expect(filledUrl('/tide')).toBe('/tide');
  });

  test('of an operation that is not there stop the writing', async () => {
    const app = await build();
    await expect(runExamples(app, { askTide: [low] }, { reset: async () => undefined })).rejects.toThrow(
      'askTide, which is no operation',
    );
  });

  test('that are excerpts keep short lists whole and the first three of long ones, at any depth', () => {
    expect(excerpt({ a: [1, 2, 3, 4], b: [1, 2, [1, 2, 3, 4, 5], 4, 5] })).toEqual({
      a: [1, 2, 3, 4],
      b: [1, 2, [1, 2, 3]],
    });
  });
});

test('a reply without a description has its operation’s summary', () => {
  const responses = { 200: { description: 'Default Response' }, 429: { description: 'Too many.' } };
  const document = { paths: { '/tide': { get: { summary: 'The tide', responses } } } };
  expect(describeReplies(document)).toEqual({
    paths: {
      '/tide': {
        get: { summary: 'The tide', responses: { ...responses, 200: { description: 'The tide.' } } },
      },
    },
  });
});

test('a choice between one schema is that schema, and a choice between two stays', () => {
  const one = { title: 'Tide', oneOf: [{ title: 'Low', type: 'string' }] };
  const two = { oneOf: [{ type: 'string' }, { oneOf: [{ type: 'null' }] }] };
  expect(withoutSingleChoices({ one, two })).toEqual({
    one: { title: 'Tide', type: 'string' },
    two: { oneOf: [{ type: 'string' }, { type: 'null' }] },
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
