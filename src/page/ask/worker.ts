import { loadClipper } from './clipper-later.ts';
import type { Request, Response } from './messages.ts';
import { methods } from './methods.ts';

/** The core in a thread of its own: the page stays quick while it thinks. */
const scope = self as unknown as {
  onmessage: (event: MessageEvent<Request>) => void;
  postMessage: (response: Response) => void;
};

/** Whether anything is to be clipped: only then is loaded what does it. */
function needsClipper(spec: unknown): boolean {
  if (typeof spec !== 'object' || spec === null) return false;
  const { knockouts, cutter } = spec as { knockouts?: unknown; cutter?: unknown };
  const kerf = typeof cutter === 'object' && cutter !== null && 'kerf' in cutter;
  return kerf || (Array.isArray(knockouts) && knockouts.length > 0);
}

async function answer({ id, method, words }: Request): Promise<Response> {
  try {
    if (needsClipper(words[0])) await loadClipper();
    const work = methods[method] as (...words: readonly unknown[]) => unknown;
    return { id, result: await work(...words) };
  } catch (error) {
    return { id, failure: error instanceof Error ? error.message : String(error) };
  }
}

scope.onmessage = async ({ data }) => scope.postMessage(await answer(data));
