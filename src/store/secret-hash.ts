import { createHash } from 'node:crypto';

/**
 * What is stored of a secret: SHA-256 in hexadecimal. A fast hash serves, since a secret is 256 random bits and no
 * password that could be guessed. The database's index compares hashes, whose bytes a caller cannot steer, so how long
 * that takes tells nothing about a secret.
 */
export const hashOf = (secret: string): string => createHash('sha256').update(secret).digest('hex');
