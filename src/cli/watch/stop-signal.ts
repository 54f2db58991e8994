/** One Ctrl+C may arrive twice, from the terminal and from npm; only a later signal means "at once". */
const sameSignalMs = 1_000;

/** Aborts at the first SIGINT or SIGTERM, so that the file in hand is finished; a later signal ends the process. */
export function stopSignal(): AbortSignal {
  const controller = new AbortController();
  let sinceMs: number | undefined;
  const onSignal = () => {
    sinceMs ??= performance.now();
    if (performance.now() - sinceMs > sameSignalMs) process.exit(1);
    controller.abort();
  };
  process.on('SIGINT', onSignal);
  process.on('SIGTERM', onSignal);
  return controller.signal;
}
