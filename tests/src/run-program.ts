import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

export const projectFolder = fileURLToPath(new URL('../..', import.meta.url));
const mainFile = fileURLToPath(new URL('../../src/cli/main.ts', import.meta.url));

export interface Run {
  readonly child: ChildProcess;
  /** What was written so far. */
  readonly output: () => string;
  readonly errors: () => string;
  /** The exit code, once it has ended. */
  readonly ended: Promise<number | null>;
}

/** Starts a program; it is killed by its process id if it outlives its test. */
export function start(
  command: string,
  words: readonly string[],
  options: {
    readonly cwd?: string;
    readonly env?: Readonly<Record<string, string | undefined>>;
    readonly input?: string;
    /** Whose process it is; default that of the tests. */
    readonly user?: { readonly uid?: number; readonly gid?: number };
  } = {},
): Run {
  const child = spawn(command, words, {
    ...options.user,
    cwd: options.cwd ?? projectFolder,
    env: { ...process.env, HOST: undefined, PORT: undefined, LOG_LEVEL: 'silent', ...options.env },
  });
  const text = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (part: string) => {
    text.out += part;
  });
  child.stderr.setEncoding('utf8').on('data', (part: string) => {
    text.err += part;
  });
  child.stdin.on('error', () => undefined); // a program may end without reading all of it
  child.stdin.end(options.input ?? '');
  const ended = new Promise<number | null>((resolve, reject) => {
    child.once('error', reject);
    child.once('close', resolve);
  });
  onTestFinished(() => {
    if (child.exitCode === null) child.kill('SIGKILL');
  });
  return { child, output: () => text.out, errors: () => text.err, ended };
}

/** Starts the command line from source, on the node that runs this test. */
export const startHemfold = (words: readonly string[], options: Parameters<typeof start>[2] = {}): Run =>
  start(process.execPath, [mainFile, ...words], options);

/** Runs the command line to its end. */
export async function runHemfold(words: readonly string[], options: Parameters<typeof start>[2] = {}) {
  const run = startHemfold(words, options);
  const code = await run.ended;
  return { code, output: run.output(), errors: run.errors() };
}
