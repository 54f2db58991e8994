import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { releaseMemory } from '../../src/quiet/release-memory.ts';
import { quietMs, watchQuiet } from '../../src/quiet/watch-quiet.ts';
import { build } from './build.ts';

describe('watchQuiet', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  function watched() {
    const onQuiet = vi.fn();
    return { watch: watchQuiet(onQuiet), times: () => onQuiet.mock.calls.length };
  }

  test('calls at once, after the start, and then only after work and a quiet minute', () => {
    const { watch, times } = watched();
    expect(times()).toBe(1);
    vi.advanceTimersByTime(10 * quietMs);
    expect(times()).toBe(1);
    watch.note();
    vi.advanceTimersByTime(quietMs - 1);
    expect(times()).toBe(1);
    vi.advanceTimersByTime(1);
    expect(times()).toBe(2);
    vi.advanceTimersByTime(10 * quietMs);
    expect(times()).toBe(2);
  });

  test('does not call while there is work, nor once it was stopped', () => {
    const { watch, times } = watched();
    for (let turn = 0; turn < 20; turn++) {
      watch.note();
      vi.advanceTimersByTime(quietMs - 1);
    }
    watch.stop();
    vi.advanceTimersByTime(quietMs);
    expect(times()).toBe(1);
  });
});

test('memory that nobody uses any more is given back', async () => {
  let waste: unknown[] = Array.from({ length: 400_000 }, (_, index) => ({ index }));
  const before = process.memoryUsage().heapTotal;
  expect(waste).toHaveLength(400_000);
  waste = [];
  await releaseMemory();
  expect(process.memoryUsage().heapTotal).toBeLessThan(before - 10 * 1024 * 1024);
});

test('a service that listens answers as ever afterwards', async () => {
  const app = await build();
  const url = await app.listen({ host: '127.0.0.1', port: 0 });
  for (const path of ['/health', '/v1/sizes', '/nothing'])
    expect((await fetch(url + path)).status).toBe(path === '/nothing' ? 404 : 200);
});
