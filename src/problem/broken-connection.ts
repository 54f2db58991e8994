import type { Socket } from 'node:net';
import { problemMediaType } from './problem.ts';
import { plainProblem } from './problem-from.ts';

const details: Readonly<Record<string, readonly [status: number, detail: string]>> = {
  ERR_HTTP_REQUEST_TIMEOUT: [408, 'The request took too long to arrive.'],
  HPE_HEADER_OVERFLOW: [431, 'The headers are too large.'],
};

/** Answers what was never a complete HTTP request, on the bare connection, then closes it. */
export function answerBrokenConnection(error: Error & { readonly code?: string }, socket: Socket): void {
  if (error.code === 'ECONNRESET' || socket.destroyed) return;
  const [status, detail] = details[error.code ?? ''] ?? [400, 'The request is not valid HTTP.'];
  const problem = plainProblem(status, detail);
  const body = JSON.stringify(problem);
  if (socket.writable)
    socket.write(
      [
        `HTTP/1.1 ${status} ${problem.title}`,
        `content-type: ${problemMediaType}`,
        `content-length: ${Buffer.byteLength(body)}`,
        'connection: close',
        '',
        body,
      ].join('\r\n'),
    );
  socket.destroy();
}
