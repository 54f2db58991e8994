import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import type { z } from 'zod';
import type { Served } from './served.ts';
import { type Question, type Reading, type Ready, reading, ready } from './server-messages.ts';

export interface MeasuredServer {
  readonly urls: Ready;
  readonly ask: (question: Question) => Promise<Reading>;
  readonly stop: () => Promise<void>;
}

const program = fileURLToPath(new URL('measured-server.ts', import.meta.url));
const longestAnswerMs = 30_000;

async function next<Message extends z.ZodType>(child: ChildProcess, message: Message) {
  const gone = new AbortController();
  const leave = () => gone.abort(new Error('the measured process ended by itself'));
  child.once('exit', leave);
  try {
    const signal = AbortSignal.any([gone.signal, AbortSignal.timeout(longestAnswerMs)]);
    const [received]: unknown[] = await once(child, 'message', { signal });
    return message.parse(received);
  } finally {
    child.off('exit', leave);
  }
}

/** Starts a process that serves only what is named, and waits until it listens. */
export async function startServer(names: readonly Served[]): Promise<MeasuredServer> {
  const child = fork(program, names, { execArgv: [...profilerFlags(), '--expose-gc'] });
  const urls = await next(child, ready);
  return {
    urls,
    ask: async (question) => {
      const answer = next(child, reading);
      child.send(question);
      return answer;
    },
    stop: async () => {
      const ended = once(child, 'exit');
      child.disconnect();
      await ended;
    },
  };
}

/** A profiler that was asked for on this process belongs on the one that serves. */
const profilerFlags = () => process.execArgv.filter((flag) => flag.startsWith('--cpu-prof'));
