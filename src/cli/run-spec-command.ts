import { InvalidConfig } from '../config.ts';
import { problemFromInput } from '../problem/problem-from.ts';
import { problemText } from '../problem/problem-text.ts';
import { CommandFailed, fileTrouble, readSpecFile, standardStream } from './read-spec.ts';
import type { SpecCommand } from './spec-command.ts';
import { writeToStandardOutput, writeWhole } from './write-output.ts';

/** What a command leaves behind: 0 done, 1 failed, 2 the spec is refused. */
export type ExitCode = 0 | 1 | 2;

async function makeFile(
  command: SpecCommand,
  specFile: string,
  output: string,
  options: Readonly<Record<string, string>>,
): Promise<void> {
  const spec = await readSpecFile(specFile);
  // loads the schemas, which help texts do without
  const { speltSpec, speltSet } = await import('./spelt-spec.ts');
  const spelt = await (command.takes === 'set' ? speltSet : speltSpec)(spec);
  const made = await command.run(spelt, options);
  if (output === standardStream) return writeToStandardOutput(made);
  await writeWhole(output, made).catch((error: unknown) => {
    throw fileTrouble('write', output, error);
  });
}

/**
 * Reads a spec, runs the command and writes what it made.
 * @param report takes lines for the person, who may have sent the output elsewhere
 * @param options the text given for each of the command's own options
 */
export async function runSpecCommand(
  command: SpecCommand,
  specFile: string,
  output: string,
  report: (text: string) => void,
  options: Readonly<Record<string, string>> = {},
): Promise<ExitCode> {
  try {
    await makeFile(command, specFile, output, options);
    return 0;
  } catch (error) {
    const problem = problemFromInput(error);
    if (problem) {
      report(`${specFile === standardStream ? '' : `${specFile}: `}${problemText(problem)}`);
      return 2;
    }
    if (!(error instanceof CommandFailed || error instanceof InvalidConfig)) throw error;
    report(`${error.message}\n`);
    return 1;
  }
}
