/** Text in the place of a secret. */
const hidden = '[hidden]';

/** Escapes of characters that need none (RFC 3986 section 2.3): the router reads them as the characters. */
const withoutNeedlessEscapes = (path: string): string =>
  path.replaceAll(/%[\da-f]{2}/giu, (escaped) => {
    const character = String.fromCharCode(Number.parseInt(escaped.slice(1), 16));
    return /[\w.~-]/u.test(character) ? character : escaped;
  });

/**
 * A URL as it may be logged: without its query, which may hold anything, without the secrets of share links, and
 * without a token that was put there by mistake.
 */
export function withoutSecrets(url: string): string {
  const [path = '', query] = url.split(/\?(.*)/su);
  const shown = withoutNeedlessEscapes(path)
    .replace(/(\/shared\/)[^/#]+/giu, `$1${hidden}`)
    .replace(/hemfold_[\da-f]+_[\w-]+/giu, hidden);
  return query === undefined ? shown : `${shown}?${hidden}`;
}
