import type { Response } from './messages.ts';
import type { Methods } from './methods.ts';

interface Waiting {
  readonly resolve: (result: never) => void;
  readonly reject: (error: Error) => void;
}

const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
const waiting = new Map<number, Waiting>();
let count = 0;

worker.onmessage = ({ data }: MessageEvent<string>) => {
  const response = JSON.parse(data) as Response;
  const asked = waiting.get(response.id);
  waiting.delete(response.id);
  if ('failure' in response) asked?.reject(new Error(response.failure));
  else asked?.resolve(response.result as never);
};

/**
 * Asks the core in its worker. Both ways go values as JSON has them.
 * @throws Error when the core failed; what cannot be folded is an answer and no failure
 */
export function ask<Name extends keyof Methods>(
  method: Name,
  ...words: Parameters<Methods[Name]>
): Promise<Awaited<ReturnType<Methods[Name]>>> {
  count++;
  const id = count;
  return new Promise((resolve, reject) => {
    waiting.set(id, { resolve, reject });
    worker.postMessage({ id, method, words });
  });
}
