import { writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { measureMemory } from './memory.ts';
import { measureStages, proofShare } from './stages.ts';
import { startServer } from './start-server.ts';
import { mebibytes, percent, textTable, times } from './text-table.ts';
import { measureThroughput } from './throughput.ts';

/*
 * npm run bench -- [--rounds N] [--seconds S] [--json FILE]
 * Prints how fast the service is beside a bare echo of the same framework, where the time goes, and how much
 * memory it takes. It judges no time; it fails when a reply is wrong.
 */

const { values } = parseArgs({
  options: {
    rounds: { type: 'string', default: '9' },
    seconds: { type: 'string', default: '1' },
    json: { type: 'string' },
  },
});
const positive = (name: string, text: string): number => {
  const value = Number(text);
  if (Number.isFinite(value) && value > 0) return value;
  throw new Error(`--${name} takes a number above 0, not ${text}`);
};
const rounds = Math.ceil(positive('rounds', values.rounds));
const seconds = positive('seconds', values.seconds);
const limits = { seconds, connections: 10, requests: Math.ceil(seconds * 50_000) };
const print = (text: string) => process.stdout.write(text);

print(`Node ${process.version}, ${availableParallelism()} processors\n\n`);

const server = await startServer(['folders', 'echo']);
const throughput = await measureThroughput(server, rounds, limits).finally(server.stop);
print(`HTTP: medians of ${rounds} rounds of ${limits.seconds} s, ${limits.connections} connections\n`);
print(
  textTable([
    ['', 'requests/s', 'of echo', 'aim', 'CPU/request', 'of echo by CPU', 'server busy'],
    ...throughput.map(({ name, aim, perSecond, ofEcho, cpuMicros, cpuOfEcho, busy }) => [
      name,
      perSecond.toFixed(0),
      times(ofEcho),
      aim === undefined ? '' : `>= ${aim} x`,
      `${cpuMicros.toFixed(1)} µs`,
      times(cpuOfEcho),
      percent(busy),
    ]),
  ]),
);

const stages = await measureStages(4 * rounds, 40);
print('\nOne drawing in process, without HTTP\n');
print(
  textTable([
    ['', 'mean', 'of the whole'],
    ...stages.map(({ name, micros, share }) => [name, `${micros.toFixed(1)} µs`, percent(share)]),
  ]),
);

print(`proof beside draw, convention and serialise: ${times(proofShare(stages))} (aim <= 1 x)\n`);

const memory = await measureMemory(Math.min(rounds, 3), limits);
print('\nMemory: resident set, fresh processes\n');
print(
  textTable([
    ['bare framework at rest', mebibytes(memory.bareAtRest)],
    ['with the same plugins', mebibytes(memory.pluginsAtRest)],
    ['service at rest', mebibytes(memory.atRest), `${times(memory.ratio)} that (aim <= 1.5 x)`],
    ['service under load, most', mebibytes(memory.underLoad)],
    ['service after load', mebibytes(memory.afterLoad)],
  ]),
);

if (values.json !== undefined) {
  const figures = { node: process.version, rounds, ...limits, throughput, stages, memory };
  writeFileSync(values.json, `${JSON.stringify(figures, null, 2)}\n`);
}
