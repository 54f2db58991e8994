import { beforeAll, expect, onTestFinished, test, vi } from 'vitest';
import type { Request, Response } from '../../src/page/ask/messages.ts';

/** A worker that answers when it is told to, in the order in which it was asked. */
class HeldWorker {
  static asked: Request[] = [];
  static onmessage: ((event: { data: string }) => void) | null = null;
  set onmessage(answer: ((event: { data: string }) => void) | null) {
    HeldWorker.onmessage = answer;
  }
  postMessage(request: Request): void {
    HeldWorker.asked.push(request);
  }
}

const results = {
  catalogue: { styles: [], sizes: [], conventions: [] },
  fold: { state: 'folded' },
  further: { proposals: [], steps: [], fits: [] },
};

async function answerNext(): Promise<Request['method'] | undefined> {
  const next = HeldWorker.asked.shift();
  if (!next) return undefined;
  const response: Response = { id: next.id, result: results[next.method as keyof typeof results] };
  HeldWorker.onmessage?.({ data: JSON.stringify(response) });
  await new Promise((done) => setImmediate(done));
  return next.method;
}

async function answerAll(): Promise<readonly string[]> {
  const answered: string[] = [];
  for (let method = await answerNext(); method; method = await answerNext()) answered.push(method);
  return answered;
}

let state: typeof import('../../src/page/state/design.ts');
beforeAll(async () => {
  vi.stubGlobal('Worker', HeldWorker);
  vi.stubGlobal('location', { hash: '' });
  vi.stubGlobal('history', { replaceState: () => {} });
  state = await import('../../src/page/state/design.ts');
});

test('what takes longer stays when it is answered before the fold that it belongs to', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  onTestFinished(() => {
    vi.useRealTimers();
  });
  const { change, design, specNow } = state;
  change('/grid', '1 mm');
  // while that is folded, another change comes, and then a pause
  change('/grid', '2 mm');
  vi.runAllTimers();
  expect(await answerAll()).toEqual(['fold', 'further', 'fold']);
  expect(design.get().further).toEqual(results.further);
  expect(design.get().told).toBe(specNow());

  // and what belongs to the design before does not
  change('/grid', '3 mm');
  expect(await answerAll()).toEqual(['fold']);
  expect(design.get()).toMatchObject({ further: undefined, told: undefined });
});
