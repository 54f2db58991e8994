import { createHash } from 'node:crypto';
import type { Act } from '../members/audit.ts';
import { readScopes } from '../members/member-rows.ts';
import type { Change } from '../store/tables.ts';
import { hemfoldVersion } from '../version.ts';
import { type ArchiveLine, archiveFormat, type LineOf } from './line.ts';
import { actRows, memberRows, revisionRows, shareRows, shelfRows, tokenRows } from './stored-rows.ts';

/** A line before it is text. The body of a version is JSON text already, and goes in as it is. */
type Line = Exclude<ArchiveLine, LineOf<'version' | 'end'>> | (LineOf<'version'> & { readonly body: string });

const textOf = (line: Line): string => {
  if (line.line !== 'version') return JSON.stringify(line);
  const { body, ...rest } = line;
  return `${JSON.stringify(rest).slice(0, -1)},"body":${body}}`;
};

/** A member that is null is left out. */
const known = <Name extends string>(name: Name, value: string | null) =>
  (value === null ? {} : { [name]: value }) as { readonly [Key in Name]?: string };

async function* memberLines(db: Change): AsyncGenerator<Line> {
  for (const { id, name, active, created } of await memberRows(db)) {
    yield { line: 'member', id, name, active: active === 1, created };
    for (const token of await tokenRows(db, id))
      yield {
        line: 'token',
        id: token.id,
        secretHash: token.secret_hash,
        scopes: [...readScopes(token.scopes)],
        created: token.created,
        ...known('expires', token.expires),
        ...known('lastUsed', token.last_used),
        ...known('revoked', token.revoked),
        ...known('note', token.note),
      };
  }
}

async function* shelfLines(db: Change): AsyncGenerator<Line> {
  for await (const shelves of shelfRows(db))
    for (const shelf of shelves) {
      const { owner, kind, highest_removed: highestRemoved } = shelf;
      yield { line: 'shelf', owner, kind, highestRemoved };
      yield* thingLines(db, shelf);
    }
}

async function* thingLines(db: Change, shelf: Parameters<typeof revisionRows>[1]): AsyncGenerator<Line> {
  let open: string | undefined;
  for await (const revisions of revisionRows(db, shelf))
    for (const { name, current, created, version, changed, body } of revisions) {
      if (name !== open) {
        const shares = shelf.kind === 'designs' ? await shareRows(db, shelf, name) : [];
        const links = shares.map((share) => ({
          id: share.id,
          secretHash: share.secret_hash,
          created: share.created,
          ...known('expires', share.expires),
        }));
        yield {
          line: 'thing',
          name,
          version: current,
          created,
          ...(links.length > 0 ? { shares: links } : {}),
        };
        open = name;
      }
      yield { line: 'version', version, changed, body };
    }
}

async function* actLines(db: Change): AsyncGenerator<Line> {
  for await (const acts of actRows(db))
    for (const { number, at, actor, actor_id, act, target, detail } of acts)
      yield {
        line: 'act',
        number,
        at,
        actor,
        ...known('actorId', actor_id),
        act: act as Act,
        ...known('target', target),
        ...known('detail', detail),
      };
}

async function* allLines(db: Change, made: string): AsyncGenerator<Line> {
  yield { line: 'archive', of: 'hemfold', format: archiveFormat, version: hemfoldVersion, made };
  yield* memberLines(db);
  yield* shelfLines(db);
  yield* actLines(db);
}

/**
 * Everything in a database as the text of an archive, line by line.
 * @param db one state of it
 * @param made the time that the archive says
 */
export async function* archiveText(db: Change, made: string): AsyncGenerator<string> {
  const hash = createHash('sha256');
  let lines = 0;
  for await (const line of allLines(db, made)) {
    const text = `${textOf(line)}\n`;
    hash.update(text);
    lines++;
    yield text;
  }
  const end: LineOf<'end'> = { line: 'end', lines, sha256: hash.digest('hex') };
  yield `${JSON.stringify(end)}\n`;
}
