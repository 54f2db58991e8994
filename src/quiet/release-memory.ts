/**
 * Gives back to the system what the engine keeps of it for work to come: a quarter of all after the start. That stops
 * the process for some tenths of a second.
 * @see https://chromedevtools.github.io/devtools-protocol/tot/HeapProfiler/#method-collectGarbage
 */
export async function releaseMemory(): Promise<void> {
  const { Session } = await import('node:inspector/promises');
  const session = new Session();
  session.connect();
  try {
    await session.post('HeapProfiler.collectGarbage');
  } finally {
    session.disconnect();
  }
}
