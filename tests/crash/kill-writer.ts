import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const writerFile = fileURLToPath(new URL('./writer.ts', import.meta.url));

/**
 * Lets a writer work on a folder, and kills it with SIGKILL once it has acknowledged a number of changes. It goes on
 * writing until the kill arrives, which is then somewhere within a change.
 * @returns the number of the change after the last one that it acknowledged
 */
export async function killWriter(
  dataDir: string,
  { seed, from, acknowledge }: { readonly seed: number; readonly from: number; readonly acknowledge: number },
): Promise<number> {
  const writer = spawn(process.execPath, [writerFile, `${seed}`, `${from}`], {
    env: { ...process.env, DATA_DIR: dataDir, DATABASE_URL: '' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const said = { output: '', errors: '' };
  writer.stderr.setEncoding('utf8').on('data', (part: string) => {
    said.errors += part;
  });
  writer.stdout.setEncoding('utf8').on('data', (part: string) => {
    said.output += part;
    if (said.output.split('\n').length > acknowledge) writer.kill('SIGKILL');
  });
  const signal = await new Promise((resolve, reject) => {
    writer.once('error', reject);
    writer.once('close', (_, by) => resolve(by));
  });
  if (signal !== 'SIGKILL') throw new Error(`the writer ended by itself: ${said.errors}`);
  const lines = said.output.split('\n').slice(0, -1); // a line cut short was not said
  const last = lines.at(-1);
  return last === undefined ? from : Number(last) + 1;
}
