import { writeScopes } from '../members/member-rows.ts';
import type { Change } from '../store/tables.ts';
import { rowInserter } from './insert-rows.ts';
import type { ArchiveLine, LineOf } from './line.ts';
import type { ReadLine, Written } from './read-archive.ts';

/** How much an archive brought. */
export interface Brought {
  readonly members: number;
  readonly things: number;
  readonly versions: number;
}

/** Inserts lines one after another; what belongs to something follows it. */
function lineInserter(change: Change) {
  const rows = rowInserter(change);
  const totals = { members: 0, things: 0, versions: 0, acts: 0 };
  let member = '';
  let shelf: LineOf<'shelf'> | undefined;
  let onShelf = { items: 0, bytes: 0 };
  let name = '';

  /** What names things on the shelf that is being filled; the order of lines was checked. */
  function place() {
    if (!shelf) throw new Error('a thing without a shelf');
    return { owner: shelf.owner, kind: shelf.kind, name };
  }

  /** A shelf counts what is on it. */
  async function closeShelf(): Promise<void> {
    if (!shelf) return;
    const { owner, kind } = shelf;
    await rows.flush();
    await change
      .updateTable('shelf')
      .set(onShelf)
      .where('owner', '=', owner)
      .where('kind', '=', kind)
      .execute();
    shelf = undefined;
    onShelf = { items: 0, bytes: 0 };
  }

  async function addMember({ id, name, active, created }: LineOf<'member'>): Promise<void> {
    member = id;
    totals.members++;
    await rows.add('member', { id, name, active: active ? 1 : 0, created });
  }

  const addToken = ({ id, secretHash, scopes, created, ...times }: LineOf<'token'>) =>
    rows.add('token', {
      id,
      member,
      secret_hash: secretHash,
      scopes: writeScopes(scopes),
      created,
      expires: times.expires ?? null,
      last_used: times.lastUsed ?? null,
      revoked: times.revoked ?? null,
      note: times.note ?? null,
    });

  async function addShelf(line: LineOf<'shelf'>): Promise<void> {
    await closeShelf();
    shelf = line;
    const { owner, kind, highestRemoved } = line;
    await rows.add('shelf', { owner, kind, ...onShelf, highest_removed: highestRemoved });
  }

  async function addThing({ name: own, version, created, shares = [] }: LineOf<'thing'>): Promise<void> {
    name = own;
    onShelf.items++;
    totals.things++;
    await rows.add('item', { ...place(), version, created });
    for (const { id, secretHash, created: made, expires } of shares)
      await rows.add('share', {
        ...place(),
        id,
        secret_hash: secretHash,
        created: made,
        expires: expires ?? null,
      });
  }

  async function addVersion({ version, changed }: LineOf<'version'>, body: Written): Promise<void> {
    onShelf.bytes += body.bytes;
    totals.versions++;
    const row = { ...place(), version, body: body.text, bytes: body.bytes, changed };
    await rows.add('revision', row, body.bytes);
  }

  async function addAct({ number, at, actor, act, ...rest }: LineOf<'act'>): Promise<void> {
    await closeShelf();
    totals.acts = number;
    await rows.add('audit', {
      number,
      at,
      actor,
      actor_id: rest.actorId ?? null,
      act,
      target: rest.target ?? null,
      detail: rest.detail ?? null,
    });
  }

  async function add(line: ArchiveLine, body: Written | undefined): Promise<void> {
    if (line.line === 'member') await addMember(line);
    else if (line.line === 'token') await addToken(line);
    else if (line.line === 'shelf') await addShelf(line);
    else if (line.line === 'thing') await addThing(line);
    else if (line.line === 'version' && body) await addVersion(line, body);
    else if (line.line === 'act') await addAct(line);
  }

  return {
    add,
    async finish() {
      await closeShelf();
      await rows.flush();
      return totals;
    },
  };
}

/** Inserts what the lines of an archive say. @returns with what it brought, the highest number of its acts */
export async function insertLines(
  change: Change,
  lines: AsyncIterable<ReadLine>,
): Promise<Brought & { readonly acts: number }> {
  const inserter = lineInserter(change);
  for await (const { line, body } of lines) await inserter.add(line, body);
  return inserter.finish();
}
