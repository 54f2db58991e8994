#!/usr/bin/env node
import { buildProgram } from './program.ts';

/** A reader that leaves early, as `head` does, is no fault; nothing more can be told to it. */
const quietWhenUnread = (stream: NodeJS.WriteStream) =>
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });

quietWhenUnread(process.stdout);
quietWhenUnread(process.stderr);

try {
  await buildProgram({
    show: (text) => process.stdout.write(text),
    report: (text) => process.stderr.write(text),
    setExitCode: (code) => {
      process.exitCode = code;
    },
  }).parseAsync();
} catch (error) {
  process.stderr.write(
    `hemfold failed: ${error instanceof Error ? (error.stack ?? error.message) : error}\n`,
  );
  process.exitCode = 1;
}
