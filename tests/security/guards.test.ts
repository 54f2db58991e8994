import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { guards } from './guards.ts';

const root = join(import.meta.dirname, '../..');

test('every guard that npm run guards takes away is still there, once', () => {
  expect(guards.length).toBeGreaterThan(40);
  const times = guards.map(({ file, find, what }) => ({
    what,
    times: readFileSync(join(root, file), 'utf8').split(find).length - 1,
  }));
  expect(times.filter((each) => each.times !== 1)).toEqual([]);
  for (let item = 1; item <= 10; item++)
    expect(
      guards.some((each) => each.item === item),
      `API${item}`,
    ).toBe(true);
});
