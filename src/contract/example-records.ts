import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AppOptions } from '../app.ts';
import { commandLine } from '../members/audit.ts';
import { scopes } from '../members/caller.ts';
import { type Random, readTokenText } from '../members/secrets.ts';
import { openRecords, type Records } from '../records.ts';
import { exampleSecret, keptConvention, keptCutter, keptDesign, keptPaper } from './kept-examples.ts';

/** What the examples take for now. */
const exampleClock = () => new Date('2026-11-25T18:30:00Z');

/** The link that the examples read, and the one that they make; neither opens anything. */
const shares = [
  { id: 'link-0000001', secret: exampleSecret },
  { id: 'link-0000002', secret: 'an-example-of-the-secret-part-of-a-link-0002' },
] as const;

/** Bytes that are the same in every run: 0, 1, 2 … */
function countingBytes(from: number) {
  let count = from;
  return (bytes: number) => Buffer.from(Array.from({ length: bytes }, () => count++ % 256));
}

export interface ExampleRecords {
  /** For an app of a group whose keeper asks. */
  readonly options: AppOptions;
  readonly settings: Readonly<Record<string, string>>;
  /** Says that the keeper asks. */
  readonly headers: Readonly<Record<string, string>>;
  /** Puts everything back as every example finds it. */
  readonly reset: () => Promise<void>;
  /** Removes all files. */
  readonly dispose: () => Promise<void>;
}

/** Fills empty records, and gives back what shows that the keeper asks. */
async function fill({ members, store }: Records): Promise<string> {
  const keeper = await members.add(commandLine, 'Keeper', { scopes });
  const other = await members.add(commandLine, 'Thursday evening', { scopes: ['read', 'write'] });
  if (typeof keeper === 'string' || typeof other === 'string') throw new Error('the records are not empty');
  const key = readTokenText(keeper.token.text);
  const known = key && (await members.identify({ by: 'token', key }));
  if (!known) throw new Error('the keeper is not known');
  const { owner } = known;
  await store.put(owner, 'stock', keptPaper.name, keptPaper.value, 'any');
  await store.put(owner, 'cutters', keptCutter.name, keptCutter.value, 'any');
  await store.put(owner, 'conventions', keptConvention.name, keptConvention.value, 'any');
  await store.put(owner, 'designs', keptDesign.name, keptDesign.value, 'any');
  await store.share(owner, keptDesign.name);
  return keeper.token.text;
}

/** Records for the examples of the contract: the same in them every time, in files that are thrown away. */
export async function openExampleRecords(): Promise<ExampleRecords> {
  const folder = await mkdtemp(join(tmpdir(), 'hemfold-examples-'));
  const open = (name: string, random: Random, share: (typeof shares)[number]) =>
    openRecords({ dataDir: join(folder, name), databaseUrl: undefined }, exampleClock, {
      newShare: () => share,
      random,
    });
  const filled = open('filled', countingBytes(0), shares[0]);
  const token = await fill(filled);
  await filled.close();
  let count = 0;
  // copies are quicker than filling anew
  const openCopy = async () => {
    const name = String(count++);
    await cp(join(folder, 'filled'), join(folder, name), { recursive: true });
    return open(name, countingBytes(128), shares[1]);
  };
  let current = await openCopy();
  // the app keeps its records; these pass every call on to the current ones
  const part = <Name extends 'store' | 'members' | 'archive'>(name: Name) =>
    new Proxy({} as Records[Name], { get: (_, member) => Reflect.get(current[name], member) });
  return {
    options: {
      clock: exampleClock,
      records: {
        store: part('store'),
        members: part('members'),
        archive: part('archive'),
        close: () => current.close(),
      },
    },
    settings: { GROUP: 'true', RATE_LIMIT: '0' },
    headers: { authorization: `Bearer ${token}` },
    reset: async () => {
      await current.close();
      current = await openCopy();
    },
    dispose: async () => {
      await current.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
