import { Command } from 'commander';
import { hemfoldVersion } from '../version.ts';
import { type FolderCommand, folderCommands } from './folder-commands.ts';
import { standardStream } from './read-spec.ts';
import { type ExitCode, runFolderCommand } from './run-folder-command.ts';
import { type ServeOptions, serve, settingsHelp } from './serve.ts';

export interface Terminal {
  /** Standard output. */
  readonly show: (text: string) => void;
  /** Standard error. */
  readonly report: (text: string) => void;
  readonly setExitCode: (code: ExitCode) => void;
}

/** The command line: `serve`, and one command for each entry of the table. */
export function buildProgram(
  { show, report, setExitCode }: Terminal,
  commands: readonly FolderCommand[] = folderCommands,
): Command {
  const program = new Command('hemfold')
    .description('Solves one-sheet paper folders and draws them as layered SVG.')
    .version(hemfoldVersion)
    .configureOutput({ writeOut: show, writeErr: report })
    .showHelpAfterError('(hemfold --help lists the commands)');

  program
    .command('serve')
    .description('answer over HTTP until told to stop')
    .option('--host <address>', 'the address to listen on; wins over HOST')
    .option('--port <number>', 'the port to listen on; wins over PORT')
    .addHelpText('after', settingsHelp)
    .action(async (options: ServeOptions) => {
      setExitCode(await serve(options, show, report));
    });

  for (const command of commands) {
    const line = program
      .command(command.name)
      .description(command.summary)
      .argument('<spec>', `a file with the folder spec as JSON; ${standardStream} for standard input`)
      .option('-o, --output <file>', 'the file to write', standardStream);
    for (const { name, summary, fallback } of command.options ?? [])
      line.option(`--${name} <${name}>`, summary, fallback);
    line.action(async (spec: string, { output, ...options }: Readonly<Record<string, string>>) => {
      setExitCode(await runFolderCommand(command, spec, output ?? standardStream, report, options));
    });
  }

  return program;
}
