import { afterAll, describe, expect, test } from 'vitest';
import type { NestProgress } from '../../shared/nesting/nesting.ts';
import { nestingPool, TooBusyError } from '../../src/nesting/nesting-pool.ts';
import { kitNumber } from '../support/kits.ts';
import { nestingFaults } from '../support/nesting-faults.ts';

const pool = nestingPool();
afterAll(pool.close);

const quick = { ...kitNumber(3), evaluations: 300 };
/** Far more than any test waits for. */
const endless = { ...kitNumber(4), evaluations: 1_000_000 };

describe('nesting in a worker', () => {
  test('gives the same answer every time', async () => {
    const [one, other] = await Promise.all([pool.run(quick), pool.run(quick)]);
    expect(nestingFaults(quick, one)).toEqual([]);
    expect(other).toEqual(one);
  });

  test('says how far it is, and when cancelled gives the best so far', async () => {
    const abort = new AbortController();
    const heard: NestProgress[] = [];
    const nesting = await pool.run(endless, {
      signal: abort.signal,
      onProgress: (progress) => {
        heard.push(progress);
        abort.abort();
      },
    });
    expect(nesting.stopped).toBe('cancelled');
    expect(nestingFaults(endless, nesting)).toEqual([]);
    expect(heard[0]).toMatchObject({ paper: 'card', bound: expect.any(Number), sheets: expect.any(Number) });
    expect(nesting.sheets).toBeLessThanOrEqual(heard[0]?.sheets ?? 0);
  });

  test('stops at its time limit, and says so', async () => {
    const nesting = await pool.run(endless, { timeLimitMs: 1 });
    expect(nesting.stopped).toBe('time limit');
    expect(nestingFaults(endless, nesting)).toEqual([]);
  });

  test('a search that was cancelled before it began still places everything', async () => {
    const nesting = await pool.run(endless, { signal: AbortSignal.abort() });
    expect(nesting.stopped).toBe('cancelled');
    expect(nestingFaults(endless, nesting)).toEqual([]);
  });

  test('refuses what is no spec before it waits for a worker', async () => {
    await expect(pool.run({ pieces: [], sheets: [] })).rejects.toMatchObject({
      name: 'ZodError',
      issues: expect.arrayContaining([expect.objectContaining({ path: ['pieces'] })]),
    });
  });

  test('refuses at once when too many wait', async () => {
    const small = nestingPool({ waiting: 1 });
    const answers = await Promise.allSettled([1, 2, 3, 4].map(() => small.run(quick)));
    await small.close();
    const refused = answers.filter((answer) => answer.status === 'rejected');
    expect(refused.length).toBeGreaterThanOrEqual(2);
    expect(refused.every(({ reason }) => reason instanceof TooBusyError)).toBe(true);
    expect(answers.some((answer) => answer.status === 'fulfilled')).toBe(true);
  });

  test('refuses at once what might be answered too late after those before it, by their time limits', async () => {
    const small = nestingPool({ answerMs: 90_000 });
    const [first, second, third, short] = await Promise.allSettled(
      [60_000, 30_000, 30_000, 0].map((timeLimitMs) => small.run(quick, { timeLimitMs })),
    );
    expect([first?.status, second?.status, short?.status]).toEqual(Array(3).fill('fulfilled'));
    expect(third).toMatchObject({ status: 'rejected', reason: expect.any(TooBusyError) });
    // once they are answered there is room again, and one alone may take as long as it asks for
    await expect(small.run(quick, { timeLimitMs: 100_000 })).resolves.toMatchObject({
      stopped: expect.any(String),
    });
    await small.close();
  });
});
