import { expect } from 'vitest';
import { type Run, startHemfold } from './run-program.ts';

export interface Served extends Run {
  readonly url: string;
}

/** Waits until a service has said where it answers. */
export async function addressOf(run: Run): Promise<string> {
  await expect.poll(() => run.output() + run.errors(), { timeout: 60_000 }).toContain('Ctrl+C');
  const [, url] = / at (http\S+)\nThe maker/.exec(run.output()) ?? [];
  if (url === undefined) throw new Error(run.output());
  return url;
}

/** A service in a process of its own, on a free port. */
export async function serve(env: Readonly<Record<string, string>>): Promise<Served> {
  const run = startHemfold(['serve', '--port', '0'], { env });
  return { ...run, url: await addressOf(run) };
}

/** The body of a stored paper. */
export const paper = (number: number) => ({
  size: 'craft-12x12',
  grammage: 100 + (number % 200),
});

export const putPaper = (
  url: string,
  name: string,
  number: number,
  headers: Readonly<Record<string, string>> = {},
) =>
  fetch(`${url}/v1/stock/${name}`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json', ...headers },
    body: JSON.stringify(paper(number)),
  });
