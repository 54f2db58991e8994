import type { Writable } from 'node:stream';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { type Actor, lockActs, writeAct } from '../members/audit.ts';
import { defaultLimits } from '../store/limits.ts';
import type { Runner } from '../store/runner.ts';
import type { Clock } from '../store/store.ts';
import type { Brought } from './insert-lines.ts';
import { readArchive } from './read-archive.ts';
import { NobodyInArchive, replaceEverything } from './replace-everything.ts';
import { archiveText } from './write-archive.ts';

/** One JSON value a line; widely used, and registered by nobody. */
export const archiveMediaType = 'application/x-ndjson';

/** An archive, whose bytes can be read more than once. */
export type ArchiveSource = () => AsyncIterable<Uint8Array>;

/** Everything that is kept, as one file. Every method may throw {@link StoreUnavailable}. */
export interface Archive {
  /**
   * Writes everything to a stream and ends it: one state of the database, while others go on changing it. The act
   * is in the audit log before the first byte.
   * @throws the error of the stream, such as that its reader left
   */
  exportTo(by: Actor, out: Writable): Promise<void>;
  /**
   * Puts the content of an archive in the place of everything. Every line is checked before anything is changed, and
   * the change is one transaction.
   * @param options `replace` allows that something was there; `needsAdmin` refuses an archive that has nobody to
   * keep the group
   * @throws {BadArchive} for a file that is no whole and sound archive
   */
  restore(
    by: Actor,
    source: ArchiveSource,
    options: { readonly replace: boolean; readonly needsAdmin: boolean },
  ): Promise<Brought | 'not-empty' | 'no-admin'>;
}

/**
 * Writes lines to a stream and ends it.
 * @returns the stream's own failure; one of the lines is thrown, since it may be the database's
 */
async function writeAll(
  lines: AsyncIterable<string>,
  out: Writable,
): Promise<{ readonly error: unknown } | undefined> {
  let ofLines: unknown;
  const noted = async function* () {
    try {
      yield* lines;
    } catch (error) {
      ofLines = error;
      throw error;
    }
  };
  try {
    await pipeline(Readable.from(noted()), out);
    return undefined;
  } catch (error) {
    if (error === ofLines) throw error;
    return { error };
  }
}

/** The archive of the database that the runner holds. */
export function createArchive(runner: Runner, clock: Clock): Archive {
  const now = () => clock().toISOString();
  const read = (source: ArchiveSource) => readArchive(source(), defaultLimits.bodyBytes);

  return Object.freeze<Archive>({
    async exportTo(by, out) {
      const made = now();
      await runner.change(async (change) => {
        await lockActs(change);
        await writeAct(change, { by, now: made }, 'exported');
      });
      const failure = await runner.snapshot((db) => writeAll(archiveText(db, made), out));
      if (failure) throw failure.error;
    },

    async restore(by, source, options) {
      for await (const _ of read(source)); // to the end, or to what is wrong
      try {
        return await runner.change((change) =>
          replaceEverything(change, read(source), { by, now: now() }, options),
        );
      } catch (error) {
        if (error instanceof NobodyInArchive) return 'no-admin';
        throw error;
      }
    },
  });
}
