import { type Limits, load } from './load.ts';
import { median } from './median.ts';
import { specNumber } from './specs.ts';
import { type MeasuredServer, startServer } from './start-server.ts';

/** Resident set sizes in bytes, each in a fresh process of its own. */
export interface Memory {
  readonly bareAtRest: number;
  readonly atRest: number;
  readonly ratio: number;
  /** The most while all-different specs come in. */
  readonly underLoad: number;
  /** After that load, garbage collected. */
  readonly afterLoad: number;
}

const fresh = async <Result>(
  name: 'folders' | 'echo',
  use: (server: MeasuredServer) => Promise<Result>,
): Promise<Result> => {
  const server = await startServer([name]);
  try {
    return await use(server);
  } finally {
    await server.stop();
  }
};

async function rssUnderLoad(server: MeasuredServer, limits: Limits) {
  await server.ask('at rest');
  let index = 0;
  const body = () => JSON.stringify(specNumber(index++));
  await load({ url: server.urls.folders ?? '', status: 200, body }, limits);
  const { peakRss } = await server.ask('now');
  const { rss } = await server.ask('at rest');
  return { underLoad: peakRss, afterLoad: rss };
}

export async function measureMemory(rounds: number, limits: Limits): Promise<Memory> {
  const bare: number[] = [];
  const full: number[] = [];
  const atRest = async (server: MeasuredServer) => (await server.ask('at rest')).rss;
  for (let turn = 0; turn < rounds; turn++) {
    bare.push(await fresh('echo', atRest));
    full.push(await fresh('folders', atRest));
  }
  const loaded = await fresh('folders', (server) => rssUnderLoad(server, limits));
  const [bareAtRest, fullAtRest] = [median(bare), median(full)];
  return { bareAtRest, atRest: fullAtRest, ratio: fullAtRest / bareAtRest, ...loaded };
}
