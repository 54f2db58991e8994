import { randomBytes } from 'node:crypto';

/** Where chance comes from; only examples, which are compared, have another source than the system's. */
export type Random = (bytes: number) => Buffer;
export const systemRandom: Random = (bytes) => randomBytes(bytes);

/** 256 random bits as 43 characters that need no escaping in a header, a cookie or a URL. */
export const newSecret = (random: Random): string => random(32).toString('base64url');

/** An id that nobody had before, 20 hexadecimal digits. Ids sort by the time at which they were made. */
export const newId = (random: Random, now: Date): string =>
  now.getTime().toString(16).padStart(12, '0') + random(4).toString('hex');

/** What names a token and what proves that it is held. */
export interface TokenKey {
  readonly id: string;
  readonly secret: string;
}

/** The text of a token, as its member keeps and sends it. */
export const tokenText = ({ id, secret }: TokenKey): string => `hemfold_${id}_${secret}`;

const tokenPattern = /^hemfold_([\da-f]{20})_([\w-]{43})$/;

/** Undefined for a text that is no token. */
export function readTokenText(text: string): TokenKey | undefined {
  const [, id, secret] = tokenPattern.exec(text) ?? [];
  return id === undefined || secret === undefined ? undefined : { id, secret };
}

/** Whether a text can be the secret of a cookie. */
export const isSecret = (text: string): boolean => /^[\w-]{43}$/.test(text);
