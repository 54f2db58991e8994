import fastify from 'fastify';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { NestInput } from '../../shared/nesting/nest-spec.ts';
import { setPlanReply } from '../../shared/sets/set-plan-reply.ts';
import { setProgress } from '../../shared/sets/set-progress.ts';
import { setSpec } from '../../shared/sets/set-spec.ts';
import type { NestingOptions } from '../../src/nesting/nesting-pool.ts';
import { nestingPool } from '../../src/nesting/nesting-pool.ts';
import { GivenUp } from '../../src/sets/given-up.ts';
import { sendEvents } from '../../src/sets/plan-events.ts';
import { planSet } from '../../src/sets/plan-set.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';

/** Sixty kinds, which no search places at once. */
const long = {
  units: 'mm',
  kits: 60,
  papers: [{ name: 'Chart white', size: 'iso-a3' }],
  pieces: Array.from({ length: 60 }, (_, index) => ({
    name: `piece ${index}`,
    cut: { width: 20 + ((index * 37) % 110), height: 20 + ((index * 53) % 97) },
  })),
};
const refused = { ...long, pieces: [{ name: 'mat', cut: { width: 500, height: 500 } }] };

/** Events by the rules of the HTML standard, as far as the service uses them. */
const eventsIn = (text: string) =>
  text
    .split('\n\n')
    .filter((block) => block !== '' && !block.startsWith(':'))
    .map((block) => {
      const lines = Object.fromEntries(
        block.split('\n').map((line): [string, string] => {
          const colon = line.indexOf(': ');
          return [line.slice(0, colon), line.slice(colon + 2)];
        }),
      );
      return { event: lines.event, data: JSON.parse(lines.data ?? '') as unknown };
    });

const asked = async (payload: object, accept: string) =>
  (await build()).inject({ method: 'POST', url: '/v1/sets/plan', headers: { accept }, payload });

describe('a plan that takes its time', () => {
  test('says how far it is, then what it found, as events', async () => {
    const reply = await asked({ ...long, timeLimit: 1 }, 'text/event-stream');
    expect(reply.statusCode).toBe(200);
    expect(reply.headers['content-type']).toBe('text/event-stream');
    const events = eventsIn(reply.body);
    const progress = events.slice(0, -1);
    expect(progress.length).toBeGreaterThan(0);
    for (const { event, data } of progress) {
      expect(event).toBe('progress');
      expect(setProgress.parse(data).paper).toBe('Chart white');
    }
    const last = events.at(-1);
    expect(last?.event).toBe('plan');
    expect(setPlanReply.parse(last?.data).kits).toBe(60);
  });

  test('ends in a problem where it cannot be made', async () => {
    const plain = await asked(refused, 'application/json');
    expectProblem(plain, 422);
    const reply = await asked(refused, 'application/json, text/event-stream; q=0.5');
    expect(eventsIn(reply.body).at(-1)).toEqual({ event: 'problem', data: plain.json() });
  });

  test('a set that cannot be read is refused before any event', async () => {
    expectProblem(await asked({ ...long, kits: 0 }, 'text/event-stream'), 400);
  });

  test('the best so far is the answer at the time limit, and says so', async () => {
    const plan = setPlanReply.parse((await asked({ ...long, timeLimit: 0.1 }, '*/*')).json());
    expect(plan.papers.map(({ stopped }) => stopped)).toEqual(['time limit']);
    expect(plan.pieces.every(({ quantity }) => quantity === 64)).toBe(true); // 60 / 0.95 = 63.2
    const placed = plan.papers.flatMap(({ layouts }) =>
      layouts.flatMap((layout) => Array.from({ length: layout.times }, () => layout.placed.length)),
    );
    expect(placed.reduce((sum, count) => sum + count, 0)).toBe(60 * 64);
  });

  test.each([0, -1, 61, '5 s'])('a time limit of %s is refused where it stands', async (timeLimit) => {
    const reply = await asked({ ...long, timeLimit }, '*/*');
    expectProblem(reply, 400);
    expect(reply.json().errors[0].path).toBe('/timeLimit');
  });
});

describe('while nothing can be said', () => {
  afterEach(() => {
    vi.useRealTimers();
  });

  test('a comment is sent every 15 s, which readers pass over, and none once the plan is there', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
    const app = fastify();
    const begun = Promise.withResolvers<void>();
    const work = Promise.withResolvers<never>();
    app.get('/', (_, reply) => {
      sendEvents(reply, () => work.promise);
      begun.resolve();
    });
    const reply = app.inject('/').then(({ body }) => body);
    await begun.promise;
    vi.advanceTimersByTime(44_000);
    work.reject(new Error('it fails'));
    const body = await reply;
    expect(body.split('event: ')[0]).toBe(':\n\n:\n\n');
    expect(eventsIn(body).map(({ event }) => event)).toEqual(['problem']);
    expect(vi.getTimerCount()).toBe(0);
    await app.close();
  });
});

describe('a caller who goes away', () => {
  test('ends the search, and no further paper is begun', async () => {
    const pool = nestingPool();
    const leaving = new AbortController();
    const begun: NestInput[] = [];
    const watched = {
      run: (input: NestInput, options: NestingOptions = {}) => {
        begun.push(input);
        return pool.run(input, { ...options, onProgress: () => leaving.abort() });
      },
    };
    const twoPapers = {
      ...long,
      papers: [...long.papers, { name: 'Signal red', size: 'iso-a3' }],
      pieces: long.pieces.map((piece, index) => ({ ...piece, paper: index % 2 })),
    };
    try {
      const planned = planSet(setSpec.parse(twoPapers), watched, { signal: leaving.signal });
      await expect(planned).rejects.toThrow(GivenUp);
      expect(begun.length).toBe(1);
    } finally {
      await pool.close();
    }
  });
});

test('a caller who went away before has no piece solved but the one in hand', async () => {
  const set = setSpec.parse(long);
  const run = () => Promise.reject(new Error('nothing is nested'));
  await expect(planSet(set, { run }, { signal: AbortSignal.abort() })).rejects.toThrow(GivenUp);
});
