import { aboutVariable, InvalidConfig, readConfig, variableNames } from '../config.ts';
import { firstCurl } from './first-spec.ts';
import type { ExitCode } from './run-folder-command.ts';

export interface ServeOptions {
  readonly host?: string;
  readonly port?: string;
}

const banner = (url: string): string =>
  [
    `hemfold answers at ${url}`,
    `API pages:         ${url}/docs`,
    'Your first folder, as SVG:',
    `  ${firstCurl(url)}`,
    'Stop with Ctrl+C.',
    '',
  ].join('\n');

/** The settings, for the help text. */
export const settingsHelp = (): string =>
  [
    '',
    'Settings, as environment variables:',
    ...variableNames.map((name) => `  ${name.padEnd(12)} ${aboutVariable(name).description}`),
  ].join('\n');

/** Serves until it is told to stop. Options win over environment variables. */
export async function serve(
  { host, port }: ServeOptions,
  show: (text: string) => void,
  report: (text: string) => void,
): Promise<ExitCode> {
  // only this command needs the framework
  const { CannotListen, startServer, untilStopped } = await import('../server.ts');
  try {
    const config = readConfig({
      ...process.env,
      ...(host ? { HOST: host } : {}),
      ...(port ? { PORT: port } : {}),
    });
    const { app, url } = await startServer(config);
    show(banner(url));
    await untilStopped(app);
    return 0;
  } catch (error) {
    if (error instanceof InvalidConfig) {
      report(error.message);
      return 2;
    }
    if (!(error instanceof CannotListen)) throw error;
    report(`${error.message}\n`);
    return 1;
  }
}
