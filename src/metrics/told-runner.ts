import type { Runner } from '../store/runner.ts';
import { StoreUnavailable } from '../store/store-errors.ts';
import { type StoreNews, storeWork } from './topics.ts';

async function told<Result>(operation: StoreNews['operation'], work: () => Promise<Result>): Promise<Result> {
  const begunMs = performance.now();
  const tell = (outcome: StoreNews['outcome']) =>
    storeWork.tell({ operation, outcome, seconds: (performance.now() - begunMs) / 1000 });
  try {
    const result = await work();
    tell('done');
    return result;
  } catch (error) {
    tell(error instanceof StoreUnavailable ? error.fault : 'error');
    throw error;
  }
}

/** The same runner, which tells how each piece of work ended and how long it took. */
export const toldRunner = (runner: Runner): Runner =>
  Object.freeze<Runner>({
    read: (work) => told('read', () => runner.read(work)),
    change: (work) => told('change', () => runner.change(work)),
    snapshot: (work) => told('snapshot', () => runner.snapshot(work)),
    close: () => runner.close(),
  });
