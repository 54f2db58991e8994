import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import Fastify from 'fastify';
import { served } from './served.ts';
import type { Question, Reading, Ready } from './server-messages.ts';

/*
 * A process of its own that serves what its arguments name, `folders`, `echo` or `plugins`, and answers questions
 * about itself. It ends when the process that started it goes or lets go.
 */

/** The whole service as it runs, without what would refuse the load. */
async function serveFolders() {
  // loaded only when asked for, so that the bare process stays bare
  const [{ buildApp }, { readConfig }] = await Promise.all([
    import('../../src/app.ts'),
    import('../../src/config.ts'),
  ]);
  const folder = mkdtempSync(join(tmpdir(), 'hemfold-bench-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  const settings = { LOG_LEVEL: 'silent', RATE_LIMIT: '0', DATA_DIR: folder };
  const app = await buildApp(readConfig(settings), { refuseUnderPressure: false });
  await app.store.ready(); // as at every start
  return app;
}

/** The least that the framework can do with a JSON body: read it and send it back. */
async function serveEcho() {
  const app = Fastify();
  app.post('/echo', async (request) => request.body);
  return app;
}

const serveWithPlugins = async () => (await import('./bare-with-plugins.ts')).bareWithPlugins();

const servers = {
  folders: { serve: serveFolders, path: '/v1/folders/svg' },
  echo: { serve: serveEcho, path: '/echo' },
  plugins: { serve: serveWithPlugins, path: '/echo' },
} as const;

process.on('disconnect', () => process.exit());
if (!process.connected) process.exit(); // let go of before it could listen for that

let peakRss = 0;
const notePeak = () => {
  peakRss = Math.max(peakRss, process.memoryUsage.rss());
};
setInterval(notePeak, 100).unref();

function reading(): Reading {
  notePeak();
  const { active, idle } = performance.eventLoopUtilization();
  const { user, system } = process.cpuUsage();
  const rss = process.memoryUsage.rss();
  const peak = peakRss;
  peakRss = rss;
  return { cpuMicros: user + system, activeMs: active, idleMs: idle, rss, peakRss: peak };
}

async function collectGarbage(): Promise<void> {
  const { gc } = globalThis;
  if (gc === undefined) throw new Error('start this process with --expose-gc');
  for (let turn = 0; turn < 5; turn++) {
    gc();
    await pause(60);
  }
}

const say = (message: Ready | Reading) => process.send?.(message);

const ready: Ready = {};
for (const name of served) {
  if (!process.argv.includes(name)) continue;
  const app = await servers[name].serve();
  const address = await app.listen({ host: '127.0.0.1', port: 0 });
  ready[name] = `${address}${servers[name].path}`;
}
process.on('message', async (question: Question) => {
  if (question === 'at rest') await collectGarbage();
  say(reading());
});
say(ready);
