import { setTimeout as pause } from 'node:timers/promises';
import { type Limits, load } from './load.ts';
import { median } from './median.ts';
import { type Served, served } from './served.ts';
import { specNumber } from './specs.ts';
import { type MeasuredServer, startServer } from './start-server.ts';

/** Resident set sizes in bytes, each in a fresh process of its own. */
export interface Memory {
  readonly bareAtRest: number;
  /** The bare framework with the plugins of the service. */
  readonly pluginsAtRest: number;
  readonly atRest: number;
  /** Of the service to the framework with its plugins; the aim is at most 1.5. */
  readonly ratio: number;
  /** The most while all-different specs come in. */
  readonly underLoad: number;
  /** After that load, garbage collected. */
  readonly afterLoad: number;
}

const fresh = async <Result>(
  name: Served,
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

/** A second after its start the service has given back what only the start needed. */
const settleMs = 1_500;

async function atRest(server: MeasuredServer): Promise<number> {
  await pause(settleMs);
  return (await server.ask('at rest')).rss;
}

export async function measureMemory(rounds: number, limits: Limits): Promise<Memory> {
  const readings: Record<Served, number[]> = { echo: [], plugins: [], folders: [] };
  for (let turn = 0; turn < rounds; turn++)
    for (const name of served) readings[name].push(await fresh(name, atRest));
  const loaded = await fresh('folders', (server) => rssUnderLoad(server, limits));
  const [bare, plugins, folders] = [
    median(readings.echo),
    median(readings.plugins),
    median(readings.folders),
  ];
  return { bareAtRest: bare, pluginsAtRest: plugins, atRest: folders, ratio: folders / plugins, ...loaded };
}
