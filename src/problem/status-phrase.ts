/**
 * Not imported: an import of `node:http` makes every one of its exports, and with them the whole of `fetch`, which
 * takes 13 MiB.
 */
const { STATUS_CODES } = process.getBuiltinModule('node:http');

/** What an HTTP status means in a few words (RFC 9110 section 15); undefined for one that is not registered. */
export const statusPhrase = (status: number): string | undefined => STATUS_CODES[status];
