import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { homeCaller } from '../members/caller.ts';
import { openStore } from '../store/open-store.ts';
import type { Store } from '../store/store.ts';
import { keptConvention, keptCutter, keptDesign, keptPaper } from './kept-examples.ts';

/** What the examples take for now. */
export const exampleClock = () => new Date('2026-11-25T18:30:00Z');

/** The link that the examples read, and the one that they make; neither opens anything. */
export const exampleSecret = 'an-example-of-the-secret-part-of-a-link-0001';
const exampleShare = { id: 'link-0000001', secret: exampleSecret };
const nextShare = { id: 'link-0000002', secret: 'an-example-of-the-secret-part-of-a-link-0002' };

export interface ExampleStore {
  readonly store: Store;
  /** Puts everything back as every example finds it. */
  readonly reset: () => Promise<void>;
  /** Removes all files. */
  readonly dispose: () => Promise<void>;
}

async function fill(store: Store): Promise<void> {
  const { owner } = homeCaller;
  const put = (kind: Parameters<Store['put']>[1], { name, value }: { name: string; value: unknown }) =>
    store.put(owner, kind, name, value, 'any');
  await put('stock', keptPaper);
  await put('cutters', keptCutter);
  await put('conventions', keptConvention);
  await put('designs', keptDesign);
  await store.share(owner, keptDesign.name);
}

/** A store for the examples of the contract: the same things in it every time, in files that are thrown away. */
export async function openExampleStore(): Promise<ExampleStore> {
  const folder = await mkdtemp(join(tmpdir(), 'hemfold-examples-'));
  let count = 0;
  const open = () => {
    const shares = [exampleShare, nextShare];
    const dataDir = join(folder, String(count++));
    return openStore({ dataDir, databaseUrl: undefined }, exampleClock, {
      newShare: () => shares.shift() ?? nextShare,
    });
  };
  let current = open();
  await fill(current);
  // the app keeps one store; this one passes every call on to the current one
  const store = new Proxy({} as Store, { get: (_, member) => Reflect.get(current, member) });
  return {
    store,
    reset: async () => {
      await current.close();
      current = open();
      await fill(current);
    },
    dispose: async () => {
      await current.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
