import autocannon from 'autocannon';

export interface Load {
  readonly url: string;
  /** The status that every reply must have. */
  readonly status: number;
  readonly headers?: Readonly<Record<string, string>>;
  /** The body of the next request. */
  readonly body: () => string;
}

export interface Limits {
  readonly seconds: number;
  readonly connections: number;
  /** Whichever comes first ends a run: its seconds or this many requests. */
  readonly requests: number;
}

export interface Loaded {
  readonly requests: number;
  readonly perSecond: number;
}

/**
 * Sends POST requests as fast as they are answered.
 * @throws when a single reply is not what it should be, since such figures would mean nothing
 */
export async function load({ url, status, headers, body }: Load, limits: Limits): Promise<Loaded> {
  const result = await autocannon({
    url,
    method: 'POST',
    connections: limits.connections,
    duration: limits.seconds,
    maxOverallRequests: limits.requests,
    sampleInt: 50, // ms, at which the end is noticed
    timeout: 5, // s
    requests: [
      {
        headers: { 'content-type': 'application/json', ...headers },
        setupRequest: (request) => ({ ...request, body: body() }),
      },
    ],
  });
  const counts = Object.entries(result.statusCodeStats ?? {}).map(([code, { count = 0 }]) => ({
    code: Number(code),
    count,
  }));
  const wrong = counts.filter(({ code }) => code !== status);
  const requests = counts.reduce((sum, { count }) => sum + count, 0);
  if (wrong.length > 0 || result.errors > 0 || requests === 0)
    throw new Error(
      `${url} should answer ${status} alone, but: ${JSON.stringify({ counts, errors: result.errors })}`,
    );
  return { requests, perSecond: requests / result.duration };
}
