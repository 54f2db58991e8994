import type { IncomingHttpHeaders } from 'node:http';
import { type RequestOptions, request } from 'node:https';

export interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

export interface Question
  extends Pick<RequestOptions, 'method' | 'headers' | 'ca' | 'maxVersion' | 'minVersion'> {
  readonly body?: string;
}

/** One request over TLS on a connection of its own. */
export function ask(url: string, { body, ...options }: Question): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request(url, { agent: false, timeout: 30_000, ...options }, (reply) => {
      let text = '';
      reply.setEncoding('utf8').on('data', (part: string) => {
        text += part;
      });
      reply.once('error', reject);
      reply.once('end', () => resolve({ status: reply.statusCode ?? 0, headers: reply.headers, body: text }));
    });
    asked.once('error', reject);
    asked.once('timeout', () => asked.destroy(new Error('no answer')));
    asked.end(body);
  });
}
