import type { Request, Response } from './messages.ts';
import { methods } from './methods.ts';
import { prepareFor } from './tools.ts';

/** The core in a thread of its own: the page stays quick while it thinks. */
const scope = self as unknown as {
  onmessage: (event: MessageEvent<Request>) => void;
  postMessage: (response: string) => void;
};

async function answer({ id, method, words }: Request): Promise<Response> {
  try {
    await prepareFor(words[0]);
    const work = methods[method] as (...words: readonly unknown[]) => unknown;
    return { id, result: await work(...words) };
  } catch (error) {
    return { id, failure: error instanceof Error ? error.message : String(error) };
  }
}

/** One request after the other, since what one has to wait for the next may not need. */
let queue: Promise<void> = Promise.resolve();

scope.onmessage = ({ data }) => {
  queue = queue.then(async () => {
    // many small objects are read faster from a text than from a copy of them
    scope.postMessage(JSON.stringify(await answer(data)));
  });
};
