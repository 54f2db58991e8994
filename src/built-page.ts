import { readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { FastifyReply, FastifyRequest } from 'fastify';

/** Where the page is built, from source; and where it is packed, beside the compiled code. */
const builtFolder = fileURLToPath(new URL('../built-page/', import.meta.url));

const mediaTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

/** Made when the page is built, the better first; a client takes what it can read. */
const encodings = [
  { name: 'br', ending: '.br' },
  { name: 'gzip', ending: '.gz' },
] as const;

const plain = { name: 'identity', ending: '' } as const;

/** What a client says that it reads; one that it refuses with `q=0` is none (RFC 9110 section 12.5.3). */
function readable({ headers }: Pick<FastifyRequest, 'headers'>): ReadonlySet<string> {
  const [...entries] = String(headers['accept-encoding'] ?? '')
    .toLowerCase()
    .split(',');
  const taken = entries
    .map((entry) => entry.trim().split(/\s*;\s*/u))
    .filter(([, quality]) => quality === undefined || !/^q=0(?:\.0*)?$/u.test(quality));
  return new Set(taken.map(([name = '']) => name));
}

async function contentOf(path: string): Promise<Buffer | undefined> {
  try {
    return await readFile(join(builtFolder, path));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'EISDIR' || code === 'ENOTDIR') return undefined;
    throw error;
  }
}

/**
 * Sends a file of the built page, compressed as its builder did where the client reads that.
 * @param path from the built folder; nothing in it may come from a client unchecked
 * @returns false where there is no such file
 */
export async function sendBuilt(
  request: FastifyRequest,
  reply: FastifyReply,
  path: string,
  cacheControl: string,
): Promise<boolean> {
  const taken = readable(request);
  for (const { name, ending } of [...encodings.filter((each) => taken.has(each.name)), plain]) {
    const content = await contentOf(`${path}${ending}`);
    if (!content) continue;
    if (name !== plain.name) reply.header('content-encoding', name);
    await reply
      .header('cache-control', cacheControl)
      .header('vary', 'accept-encoding')
      .type(mediaTypes[extname(path)] ?? 'application/octet-stream')
      .send(content);
    return true;
  }
  return false;
}
