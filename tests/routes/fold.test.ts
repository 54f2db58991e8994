import request from 'supertest';
import { describe, expect, test } from 'vitest';
import { foldDocument } from '../../shared/fold-format/fold-document.ts';
import { folderCommands } from '../../src/cli/folder-commands.ts';
import { hemfoldVersion } from '../../src/version.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';

const spec = {
  style: 'twin-sleeve',
  contents: { item: { size: 'iso-a6' }, perPocket: 2 },
  stock: { width: '12 in', height: '15 in', caliper: '0.25 mm' },
};
const url = '/v1/folders/fold';
const post = async (payload: object, headers: Readonly<Record<string, string>> = {}) =>
  (await build()).inject({ method: 'POST', url, payload, headers });

describe(`POST ${url}`, () => {
  test('answers the crease pattern and folded forms as FOLD 1.2', async () => {
    const app = await build();
    const reply = await request(app.server).post(url).send(spec).expect(200);
    expect(reply.type).toBe('application/json');
    const file = foldDocument.parse(reply.body);
    expect(file.file_creator).toBe(`hemfold ${hemfoldVersion}`);
    expect(file.file_frames.map(({ frame_title }) => frame_title).slice(0, 3)).toEqual([
      'flat',
      'closed',
      'top left corner',
    ]);
    expect(file.faces_vertices).toHaveLength(19);
  });

  test('gives the same bytes and strong entity tag for the same spec, and refuses to send them again', async () => {
    const [one, other] = [await post(spec), await post(spec)];
    expect(one.body).toBe(other.body);
    expect(one.headers.etag).toMatch(/^"[^"]+"$/);
    expect(other.headers.etag).toBe(one.headers.etag);
    expectProblem(await post(spec, { 'if-none-match': String(one.headers.etag) }), 412);
  });

  test('follows the spec: mitred corners, hems turned in', async () => {
    const reply = await post({ ...spec, corners: 'mitred', hem: { turn: 'in' } });
    const file = foldDocument.parse(reply.json());
    expect(file.faces_vertices).toHaveLength(15);
    const hem = file['edges_hemfold:step'].indexOf('left hem');
    expect(file.edges_assignment[hem]).toBe('V');
  });

  test('422 for what no sheet can become, with the bound and the shortfall', async () => {
    const problem = expectProblem(
      await post({ ...spec, stock: { width: '15 in', height: '4 in', turned: false } }),
      422,
    );
    expect(problem).toMatchObject({ type: '/problems/cannot-be-folded', bound: 'sheet height' });
  });

  test('400 names an unknown member', async () => {
    const problem = expectProblem(await post({ ...spec, colour: 'blue' }), 400);
    expect(problem.errors[0]?.path).toBe('/colour');
  });

  test('415 for another media type', async () => {
    const app = await build();
    const headers = { 'content-type': 'text/plain' };
    expectProblem(await app.inject({ method: 'POST', url, headers, payload: '{}' }), 415);
  });

  test('is in the contract by name', async () => {
    const app = await build();
    const contract = (await app.inject('/openapi.json')).json();
    const { post: operation } = contract.paths[url];
    expect(operation.operationId).toBe('foldFolder');
    expect(operation.responses['200'].content['application/json'].schema.$ref).toBe(
      '#/components/schemas/FoldDocument',
    );
  });
});

test('hemfold fold writes what the service answers, as one line', async () => {
  const command = folderCommands.find(({ name }) => name === 'fold');
  expect(await command?.run(spec, {})).toBe(`${(await post(spec)).body}\n`);
});
