// Ends with 0 while the service runs, else with 1.
const port = process.env.PORT ?? '8788';
const answer = await fetch(`http://127.0.0.1:${port}/health/live`, {
  signal: AbortSignal.timeout(4_000),
}).catch(() => undefined);
process.exitCode = answer?.ok ? 0 : 1;
