import { Command } from 'commander';
import { hemfoldVersion } from '../version.ts';
import { folderCommands } from './folder-commands.ts';
import { standardStream } from './read-spec.ts';
import { recordsCommands } from './records-commands.ts';
import { type ExitCode, runSpecCommand } from './run-spec-command.ts';
import { type ServeOptions, serve, settingsHelp } from './serve.ts';
import { setCommands } from './set-commands.ts';
import type { SpecCommand } from './spec-command.ts';
import { stopSignal } from './watch/stop-signal.ts';
import type { WatchOptions } from './watch/watch-folder.ts';
import { watchHelp } from './watch/watch-help.ts';

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
  commands: readonly SpecCommand[] = [...folderCommands, ...setCommands],
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
    .option('--group', 'members sign in, also on this machine; as GROUP=true')
    .addHelpText('after', settingsHelp)
    .action(async (options: ServeOptions) => {
      setExitCode(await serve(options, show, report));
    });

  program
    .command('watch')
    .description('keep the layered SVG beside every spec in a folder, until told to stop')
    .argument('<folder>', 'where specs (.json, .yaml, .yml) are dropped; folders in it are left alone')
    .option('--once', 'do what is there and leave; 2 if a spec was refused')
    .addHelpText('after', watchHelp)
    .action(async (folder: string, options: WatchOptions) => {
      // only this command needs the solver before it has read a spec
      const { watchFolder } = await import('./watch/watch-folder.ts');
      setExitCode(await watchFolder(folder, options, { show, report }, stopSignal()));
    });

  recordsCommands(program, { show, report, setExitCode });

  for (const command of commands) {
    const line = program
      .command(command.name)
      .description(command.summary)
      .argument(
        '<spec>',
        `a file with the ${command.takes} spec as JSON, or as YAML if its name ends in .yaml or .yml; ${standardStream} for JSON from standard input`,
      )
      .option('-o, --output <file>', 'the file to write', standardStream);
    for (const { name, summary, fallback } of command.options ?? [])
      line.option(`--${name} <${name}>`, summary, fallback);
    line.action(async (spec: string, { output, ...options }: Readonly<Record<string, string>>) => {
      setExitCode(await runSpecCommand(command, spec, output ?? standardStream, report, options));
    });
  }

  return program;
}
