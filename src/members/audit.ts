import type { Change, Database } from '../store/tables.ts';
import { type Caller, homeCaller } from './caller.ts';

/** What is written down. */
export const acts = [
  'member-added',
  'member-suspended',
  'member-resumed',
  'member-removed',
  'token-made',
  'token-revoked',
  'signed-in',
  'exported',
  'restored',
] as const;
export type Act = (typeof acts)[number];

/** Who did something. Without an id it was no member: only members have one. */
export interface Actor {
  readonly name: string;
  readonly id?: string;
}

/** Whoever may run programs where the service keeps its things. */
export const commandLine: Actor = Object.freeze({ name: 'command line' });

/** A caller as the one who does something. */
export const actorOf = ({ owner, name }: Caller): Actor =>
  owner === homeCaller.owner ? { name } : { name, id: owner };

export interface AuditEntry {
  /** Grows by one with each entry. */
  readonly number: number;
  readonly at: string;
  /** The name that the actor had then. */
  readonly actor: string;
  /** The actor's id as a member; absent for the command line and for the one user of a service at home. */
  readonly actorId?: string;
  readonly act: Act;
  /** The name of the member to whom it was done. */
  readonly target?: string;
  readonly detail?: string;
}

/** A part of the audit log, newest first. */
export interface AuditPage {
  /** Only entries with lower numbers. */
  readonly before?: number | undefined;
  readonly limit: number;
}

export interface AuditPart {
  readonly items: readonly AuditEntry[];
  /** What to give as `before` for the following page; absent on the last one. */
  readonly next?: number | undefined;
}

/** Who does something, and when. */
export interface Doing {
  readonly by: Actor;
  readonly now: string;
}

/**
 * Locks the acts on the group until the transaction ends, so that they follow one another. An update that changes
 * nothing locks the row in both databases, and makes it if it is missing.
 */
export async function lockActs(change: Change): Promise<void> {
  await change
    .insertInto('counter')
    .values({ name: 'audit', value: 0 })
    .onConflict((conflict) =>
      conflict.column('name').doUpdateSet((row) => ({ value: row.ref('counter.value') })),
    )
    .execute();
}

/** Writes an act to the audit log. The acts are locked already, or are now. */
export async function writeAct(
  change: Change,
  { by, now }: Doing,
  act: Act,
  about: { readonly target?: string; readonly detail?: string } = {},
): Promise<void> {
  const { value } = await change
    .insertInto('counter')
    .values({ name: 'audit', value: 1 })
    .onConflict((conflict) =>
      conflict.column('name').doUpdateSet((row) => ({ value: row('counter.value', '+', 1) })),
    )
    .returning('value')
    .executeTakeFirstOrThrow();
  await change
    .insertInto('audit')
    .values({
      number: value,
      at: now,
      actor: by.name,
      actor_id: by.id ?? null,
      act,
      target: about.target ?? null,
      detail: about.detail ?? null,
    })
    .execute();
}

/** See {@link Members.audit}. */
export async function listActs(db: Database, { before, limit }: AuditPage): Promise<AuditPart> {
  const rows = await db
    .selectFrom('audit')
    .selectAll()
    .$if(before !== undefined, (query) => query.where('number', '<', before ?? 0))
    .orderBy('number', 'desc')
    .limit(limit + 1)
    .execute();
  const items = rows.slice(0, limit).map(
    ({ actor_id, act, target, detail, ...rest }): AuditEntry => ({
      ...rest,
      act: act as Act,
      ...(actor_id === null ? {} : { actorId: actor_id }),
      ...(target === null ? {} : { target }),
      ...(detail === null ? {} : { detail }),
    }),
  );
  const last = items.at(-1)?.number;
  return { items, next: rows.length > limit ? last : undefined };
}
