import { expect, test } from 'vitest';
import { build } from '../src/build.ts';

const ask = async (stock: object) => {
  const app = await build();
  const payload = { style: 'twin-sleeve', stock };
  const reply = await app.inject({ method: 'POST', url: '/v1/folders/possible', payload });
  expect(reply.statusCode).toBe(200);
  return reply.json() as { readonly possible: readonly unknown[]; readonly note?: string };
};

test('a sheet that is too small for every published card says so', async () => {
  const { possible, note } = await ask({ width: '50 mm', height: '60 mm' });
  expect(possible).toEqual([]);
  expect(note).toContain('No folder from this paper holds a published card');
});

test('a list with something in it needs no note', async () => {
  const reply = await ask({ size: 'craft-12x12' });
  expect(reply.possible.length).toBeGreaterThan(0);
  expect(reply).not.toHaveProperty('note');
});
