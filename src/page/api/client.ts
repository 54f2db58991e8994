import type { Json } from '../spec/pointer.ts';

/** What the service answered. */
export type Reply =
  | { readonly kind: 'done'; readonly body: Json | undefined; readonly tag: string | undefined }
  /** Nobody is signed in. */
  | { readonly kind: 'signed-out' }
  /** It cannot be reached. */
  | { readonly kind: 'offline' }
  | { readonly kind: 'refused'; readonly status: number; readonly detail: string };

/** A request as far as it differs from reading. */
export interface Asking {
  readonly method?: 'GET' | 'PUT' | 'POST' | 'DELETE';
  readonly body?: Json;
  /** Change only what is still this version, or make only what is not there yet. */
  readonly only?: { readonly version: number } | 'new';
}

/** Milliseconds until a service that does not answer counts as out of reach. */
const patienceMs = 10_000;
/** The same for what it works on longer. */
const filePatienceMs = 120_000;

async function bodyOf(response: Response): Promise<Json | undefined> {
  const text = await response.text();
  if (text === '') return undefined;
  try {
    return JSON.parse(text) as Json;
  } catch {
    return undefined;
  }
}

const detailOf = (body: Json | undefined, status: number): string => {
  const detail = typeof body === 'object' && body !== null && 'detail' in body ? body.detail : undefined;
  return typeof detail === 'string' ? detail : `HTTP ${status}`;
};

type Refusal = Exclude<Reply, { readonly kind: 'done' }>;

async function send(
  path: string,
  accept: string,
  patience: number,
  { method = 'GET', body, only }: Asking,
): Promise<Refusal | { readonly kind: 'done'; readonly response: Response }> {
  let response: Response;
  try {
    response = await fetch(path, {
      method,
      credentials: 'same-origin',
      signal: AbortSignal.timeout(patience),
      headers: {
        accept,
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...(only === undefined
          ? {}
          : only === 'new'
            ? { 'if-none-match': '*' }
            : { 'if-match': `"${only.version}"` }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
  } catch {
    return { kind: 'offline' };
  }
  if (response.status === 401) return { kind: 'signed-out' };
  if (response.ok) return { kind: 'done', response };
  const { status } = response;
  return { kind: 'refused', status, detail: detailOf(await bodyOf(response), status) };
}

/**
 * Asks the service that served the page.
 * @param path from the page's own place, such as `v1/stock`
 */
export async function request(path: string, asking: Asking = {}): Promise<Reply> {
  const reply = await send(path, 'application/json', patienceMs, asking);
  if (reply.kind !== 'done') return reply;
  const { response } = reply;
  return { kind: 'done', body: await bodyOf(response), tag: response.headers.get('etag') ?? undefined };
}

/** Has the service make a file. */
export async function requestFile(
  path: string,
  body: Json,
): Promise<Refusal | { readonly kind: 'done'; readonly file: Blob }> {
  const reply = await send(path, '*/*', filePatienceMs, { method: 'POST', body });
  if (reply.kind !== 'done') return reply;
  try {
    return { kind: 'done', file: await reply.response.blob() };
  } catch {
    return { kind: 'offline' };
  }
}
