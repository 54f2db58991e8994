import { setTimeout as pause } from 'node:timers/promises';
import { type Limits, type Load, load } from './load.ts';
import { median } from './median.ts';
import { specNumber } from './specs.ts';
import type { MeasuredServer } from './start-server.ts';

/** One run of one load, with what the serving process spent on it. */
interface Round {
  readonly requests: number;
  readonly perSecond: number;
  /** CPU time of the serving process for each request, µs. */
  readonly cpuMicros: number;
  /** Share of the time in which the serving process had work; well below 1 the client is what limits. */
  readonly busy: number;
}

export interface Throughput {
  readonly name: string;
  /** At least this share of the echo's requests a second is the aim. */
  readonly aim: number | undefined;
  readonly perSecond: number;
  /** Median over the rounds of this load's requests a second over the echo's in the same round. */
  readonly ofEcho: number;
  readonly cpuMicros: number;
  /** The same ratio by CPU time, which other work on the machine disturbs less. */
  readonly cpuOfEcho: number;
  readonly busy: number;
  readonly rounds: readonly Round[];
}

async function entityTag(url: string, spec: string): Promise<string> {
  const reply = await fetch(url, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: spec,
  });
  const tag = reply.headers.get('etag');
  if (reply.status !== 200 || tag === null || !(await reply.text()).includes('<svg'))
    throw new Error(`${url} gave no drawing with an entity tag, but ${reply.status}`);
  return tag;
}

/** What each spec is compared with, and the loads themselves; none repeats a spec unless it is meant to. */
async function loadsFor({ urls }: MeasuredServer) {
  const { folders = '', echo = '' } = urls;
  const repeated = JSON.stringify(specNumber(0));
  const tag = await entityTag(folders, repeated);
  if (tag === (await entityTag(folders, JSON.stringify(specNumber(1)))))
    throw new Error('two specs share an entity tag');
  const different = () => {
    let index = 1;
    return () => JSON.stringify(specNumber(++index));
  };
  const svg = { url: folders, status: 200 };
  return [
    { name: 'echo, bare framework', aim: undefined, load: { url: echo, status: 200, body: different() } },
    { name: 'SVG, all specs different', aim: 0.25, load: { ...svg, body: different() } },
    { name: 'SVG, one spec repeated', aim: 0.8, load: { ...svg, body: () => repeated } },
    {
      name: 'SVG, repeated, If-None-Match: 412',
      aim: 0.8,
      load: { ...svg, status: 412, headers: { 'if-none-match': tag }, body: () => repeated },
    },
  ] satisfies { name: string; aim: number | undefined; load: Load }[];
}

async function round(server: MeasuredServer, what: Load, limits: Limits): Promise<Round> {
  // not at rest: collecting all garbage also throws compiled code away, and the round would begin cold
  const before = await server.ask('now');
  const { requests, perSecond } = await load(what, limits);
  const after = await server.ask('now');
  const active = after.activeMs - before.activeMs;
  await pause(100); // for connections to close
  return {
    requests,
    perSecond,
    cpuMicros: (after.cpuMicros - before.cpuMicros) / requests,
    busy: active / (active + after.idleMs - before.idleMs),
  };
}

const summary = (rounds: readonly Round[], echo: readonly Round[]) => {
  const over = (ratio: (mine: Round, its: Round) => number) =>
    median(rounds.flatMap((mine, index) => (echo[index] ? [ratio(mine, echo[index])] : [])));
  return {
    perSecond: median(rounds.map((each) => each.perSecond)),
    ofEcho: over((mine, its) => mine.perSecond / its.perSecond),
    cpuMicros: median(rounds.map((each) => each.cpuMicros)),
    cpuOfEcho: over((mine, its) => its.cpuMicros / mine.cpuMicros),
    busy: median(rounds.map((each) => each.busy)),
    rounds,
  };
};

/** Until the compiler has seen enough: it is still at work after the first few thousand drawings. */
const warmUp = { seconds: 15, requests: 6000 };

/**
 * Requests a second through HTTP. The loads take turns in short rounds, so that what else the machine does
 * touches all of them, and each is compared with the echo of its own round.
 */
export async function measureThroughput(
  server: MeasuredServer,
  rounds: number,
  limits: Limits,
): Promise<Throughput[]> {
  const loads = await loadsFor(server);
  for (const each of loads) await load(each.load, { ...limits, ...warmUp });
  const measured = loads.map((each) => ({ ...each, rounds: [] as Round[] }));
  for (let turn = 0; turn < rounds; turn++)
    for (const each of measured) each.rounds.push(await round(server, each.load, limits));
  const echo = measured[0]?.rounds ?? [];
  return measured.map(({ name, aim, rounds }) => ({ name, aim, ...summary(rounds, echo) }));
}
