import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { readiness } from '../../src/readiness.ts';
import { IncompatibleStore, StoreUnavailable } from '../../src/store/store-errors.ts';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
});
afterEach(() => {
  vi.useRealTimers();
});

/** A store that counts how often it is looked at. */
function looked(look: () => Promise<void>) {
  let times = 0;
  const ready = readiness({
    ready: async () => {
      times++;
      await look();
    },
  });
  return { ready, times: () => times };
}

describe('readiness', () => {
  test('looks at the store once, however many ask, and again after a second', async () => {
    const { ready, times } = looked(async () => undefined);
    await Promise.all([ready(), ready(), ready()]);
    await ready();
    expect(times()).toBe(1);
    vi.advanceTimersByTime(999);
    await ready();
    expect(times()).toBe(1);
    vi.advanceTimersByTime(1);
    await ready();
    expect(times()).toBe(2);
  });

  test('keeps a refusal as long, and then sees that the store is back', async () => {
    let fault: StoreUnavailable | undefined = new StoreUnavailable('unreachable');
    const { ready, times } = looked(async () => {
      if (fault) throw fault;
    });
    for (let turn = 0; turn < 3; turn++) await expect(ready()).rejects.toBe(fault);
    expect(times()).toBe(1);
    fault = undefined;
    await expect(ready()).rejects.toThrow(StoreUnavailable);
    vi.advanceTimersByTime(1_000);
    await ready();
    expect(times()).toBe(2);
  });

  test('takes a database of another version for one that its keeper must look after', async () => {
    const cause = new IncompatibleStore('written by another version');
    const { ready } = looked(async () => {
      throw cause;
    });
    await expect(ready()).rejects.toMatchObject({ name: 'StoreUnavailable', fault: 'unusable', cause });
  });
});

test('a store that never answers is not waited for, and not asked again meanwhile', async () => {
  vi.useRealTimers(); // the pause is one of node:timers/promises, which stays real
  const hung = Promise.withResolvers<void>();
  const { ready, times } = looked(() => hung.promise);
  await expect(Promise.all([ready(), ready()])).rejects.toMatchObject({ fault: 'unreachable' });
  await expect(ready()).rejects.toMatchObject({ fault: 'unreachable' });
  expect(times()).toBe(1);
  hung.resolve();
  await hung.promise;
  await ready();
});
