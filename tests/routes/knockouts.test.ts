import { expect, test } from 'vitest';
import { build } from '../src/build.ts';

const sleeve = {
  style: 'twin-sleeve',
  units: 'mm',
  dimensions: { panel: { width: 100, height: 140 }, spine: 14, hem: 20, topFlap: 60, overlap: 16 },
  stock: { width: 400, height: 400 },
  prefer: 'least-paper',
};

const circle = (place: string, offset: object = {}) => ({
  kind: 'figure',
  on: { place, offset },
  figure: { shape: 'circle', diameter: 20 },
});

async function post(url: string, knockouts: readonly object[]) {
  const app = await build();
  return app.inject({ method: 'POST', url: `/v1/folders/${url}`, payload: { ...sleeve, knockouts } });
}

test('a window is drawn in the knockout layer, and a plan tells where it is cut', async () => {
  const svg = await post('svg', [circle('front cover')]);
  expect(svg.statusCode).toBe(200);
  expect(svg.body).toMatch(/<g id="knockout"[^>]*><title>Knockout<\/title><path d="M [^"]+ C [^"]+ Z"/u);
  const plan = (await post('plan', [circle('front cover')])).json();
  expect(plan.knockouts).toMatchObject({
    list: [{ place: 'front cover' }],
    openings: 1,
    outlineChanges: false,
  });
  expect(plan.places).toContainEqual(expect.objectContaining({ name: 'front cover', seenFrom: 'outside' }));
});

test('a name that no place has is 422, with the names that there are', async () => {
  for (const url of ['plan', 'svg', 'views', 'fold']) {
    const reply = await post(url, [circle('front cover'), circle('frnt cover')]);
    expect(reply.statusCode).toBe(422);
    expect(reply.json()).toMatchObject({
      type: '/problems/cannot-be-folded',
      errors: [
        {
          path: '/knockouts/1/on/place',
          message: 'there is no place "frnt cover"',
          remedy: expect.stringMatching(/^did you mean "front cover"\? known here: /u),
        },
      ],
    });
  }
});

test('what must not be cut is 422 for plan and drawing, and shown in pictures', async () => {
  const near = [circle('front', { left: 10.4 }), circle('front', { right: 10.4 })];
  for (const url of ['plan', 'svg']) {
    const reply = await post(url, near);
    expect(reply.statusCode).toBe(422);
    expect(reply.json()).toMatchObject({ bound: 'web-thin', shortfall: { mm: 0.7 } });
    expect(reply.json().errors.map(({ path }: { path: string }) => path)).toEqual([
      '/knockouts/0',
      '/knockouts/1',
    ]);
  }
  const picture = await post('views?view=outside', near);
  expect(picture.statusCode).toBe(200);
  expect(picture.body).toContain('web of 0.8 mm: not to be cut');
});

test.each([
  ['a kind that is none', { kind: 'window' }, '/knockouts/0/kind'],
  [
    'a shape that is none',
    { ...circle('front'), figure: { shape: 'cirle', diameter: 20 } },
    '/knockouts/0/figure/shape',
  ],
  ['a member that is not known', { ...circle('front'), colour: 'red' }, '/knockouts/0/colour'],
  [
    'an anchor that is none',
    { ...circle('front'), on: { place: 'front', anchor: 'middle' } },
    '/knockouts/0/on/anchor',
  ],
  [
    'a length of the wrong sign',
    { ...circle('front'), on: { place: 'front', offset: { left: -3 } } },
    '/knockouts/0/on/offset/left',
  ],
])('%s is 400, by its path', async (_, knockout, path) => {
  const reply = await post('svg', [knockout]);
  expect(reply.statusCode).toBe(400);
  expect(reply.json().errors.map((error: { path: string }) => error.path)).toContain(path);
});
