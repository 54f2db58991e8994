import { z } from 'zod';
import { storedName } from '../../shared/spec/stored-name.ts';
import { acts } from '../members/audit.ts';
import { scopes } from '../members/caller.ts';
import { isStorable } from '../store/names.ts';
import { kinds } from '../store/store.ts';

/** The version of the archive's form; a reader refuses others. */
export const archiveFormat = 1;

/** A time in the form of `Date.toISOString`, which sorts as it passes. */
const moment = z.iso.datetime({ precision: 3 });
const id = z.string().regex(/^[\w-]{1,64}$/);
const hash = z.string().regex(/^[\da-f]{64}$/);
/** Bounds of PostgreSQL's `integer`. */
const count = z
  .int()
  .min(0)
  .max(2 ** 31 - 1);
const version = count.min(1);
const key = z.string().refine(isStorable, 'a database cannot keep this name');

const share = z.strictObject({ id, secretHash: hash, created: moment, expires: moment.optional() });

/**
 * The lines of an archive, each a JSON object. What belongs to something follows it: tokens their member, things
 * their shelf, versions their thing. It holds hashes of secrets and no secret.
 */
export const archiveLine = z.discriminatedUnion('line', [
  z.strictObject({
    line: z.literal('archive'),
    of: z.literal('hemfold'),
    format: z.int().min(1),
    /** Of the program that wrote it. */
    version: z.string().max(64),
    made: moment,
  }),
  z.strictObject({
    line: z.literal('member'),
    id,
    name: storedName,
    active: z.boolean(),
    created: moment,
  }),
  z.strictObject({
    line: z.literal('token'),
    id,
    secretHash: hash,
    scopes: z.array(z.enum(scopes)).min(1).max(scopes.length),
    created: moment,
    expires: moment.optional(),
    lastUsed: moment.optional(),
    revoked: moment.optional(),
    note: z.string().max(200).optional(),
  }),
  z.strictObject({ line: z.literal('shelf'), owner: key, kind: z.enum(kinds), highestRemoved: count }),
  z.strictObject({
    line: z.literal('thing'),
    name: key,
    version,
    created: moment,
    shares: z.array(share).max(10_000).optional(),
  }),
  z.strictObject({ line: z.literal('version'), version, changed: moment, body: z.unknown() }),
  z.strictObject({
    line: z.literal('act'),
    number: count.min(1),
    at: moment,
    actor: z.string().max(200),
    actorId: id.optional(),
    act: z.enum(acts),
    target: z.string().max(200).optional(),
    detail: z.string().max(1000).optional(),
  }),
  z.strictObject({
    line: z.literal('end'),
    /** How many lines stand before this one. */
    lines: count,
    /** Of all bytes before this line, in hexadecimal. */
    sha256: hash,
  }),
]);

export type ArchiveLine = z.output<typeof archiveLine>;
export type LineOf<Name extends ArchiveLine['line']> = Extract<ArchiveLine, { readonly line: Name }>;
