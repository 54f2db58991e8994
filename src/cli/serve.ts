import { aboutVariable, InvalidConfig, readConfig, variableNames } from '../config.ts';
import { NobodyKeepsGroup } from '../members/require-keeper.ts';
import { CannotUseStore } from '../store/open-at-start.ts';
import { firstCurl } from './first-spec.ts';
import type { ExitCode } from './run-spec-command.ts';

export interface ServeOptions {
  readonly host?: string;
  readonly port?: string;
  readonly group?: true;
}

const banner = (url: string): string =>
  [
    `hemfold answers at ${url}`,
    `The maker’s page:  ${url}/`,
    `API pages:         ${url}/docs`,
    'Your first folder, as SVG:',
    `  ${firstCurl(url)}`,
    'Stop with Ctrl+C.',
    '',
  ].join('\n');

const groupBanner = (url: string): string =>
  [
    `hemfold answers the members of its group at ${url}`,
    `The maker’s page:  ${url}/`,
    `API pages:         ${url}/docs`,
    `Sign in:           ${url}/sign-in`,
    'Who asks, with a token in TOKEN:',
    `  curl -sS ${url}/v1/me -H "authorization: Bearer $TOKEN"`,
    'Stop with Ctrl+C.',
    '',
  ].join('\n');

const nameWidth = Math.max(...variableNames.map(({ length }) => length));

/** The settings, for the help text. */
export const settingsHelp = (): string =>
  [
    '',
    'Settings, as environment variables:',
    ...variableNames.map((name) => `  ${name.padEnd(nameWidth)} ${aboutVariable(name).description}`),
  ].join('\n');

/** Serves until it is told to stop. Options win over environment variables. */
export async function serve(
  { host, port, group }: ServeOptions,
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
      ...(group ? { GROUP: 'true' } : {}),
    });
    const { app, url, waitsFor } = await startServer(config);
    show(config.group ? groupBanner(url) : banner(url));
    if (waitsFor !== undefined) report(`${waitsFor}\n`);
    await untilStopped(app);
    return 0;
  } catch (error) {
    if (error instanceof InvalidConfig) {
      report(error.message);
      return 2;
    }
    if (error instanceof NobodyKeepsGroup) {
      report(`${error.message}\n`);
      return 2;
    }
    if (!(error instanceof CannotListen || error instanceof CannotUseStore)) throw error;
    report(`${error.message}\n`);
    return 1;
  }
}
