import { homeCaller } from '../members/caller.ts';
import type { ArchiveLine, LineOf } from './line.ts';
import { archiveFormat } from './line.ts';

/** Ascending by code points, as the databases sort keys. */
const isBefore = (a: string, b: string) => Buffer.compare(Buffer.from(a), Buffer.from(b)) < 0;

/** Puts a key into a set; false if it was there. */
function isNew(seen: Set<string>, key: string): boolean {
  if (seen.has(key)) return false;
  seen.add(key);
  return true;
}

interface OpenThing {
  readonly thing: LineOf<'thing'>;
  /** Its highest version so far; 0 before the first. */
  readonly version: number;
}

/**
 * Holds the lines of an archive to their order, to each other, and to what must be unique. Lists are sorted, so that
 * a long archive needs little memory.
 * @returns a function that says what is wrong with the next line; undefined if nothing is
 */
export function lineOrder(): (line: ArchiveLine) => string | undefined {
  const ids = { members: new Set<string>(), tokens: new Set<string>(), shares: new Set<string>() };
  let begun = false;
  let ended = false;
  let section: 'members' | 'shelves' | 'acts' = 'members';
  let member: string | undefined;
  let shelf: LineOf<'shelf'> | undefined;
  let name: string | undefined;
  let open: OpenThing | undefined;
  let act = 0;

  /** A thing is whole once the version that it says to have has come. */
  function unfinished(): string | undefined {
    const missing = open && open.version !== open.thing.version;
    if (missing) return `comes before version ${open?.thing.version} of ${JSON.stringify(open?.thing.name)}.`;
    open = undefined;
    return undefined;
  }

  const checks: { readonly [Name in ArchiveLine['line']]: (line: LineOf<Name>) => string | undefined } = {
    archive({ format }) {
      if (begun) return 'begins an archive within an archive.';
      begun = true;
      return format === archiveFormat ? undefined : `has the form ${format}, which this version cannot read.`;
    },
    member({ id, name: next }) {
      if (section !== 'members') return 'is a member among things that come later.';
      if (member !== undefined && !isBefore(member, next)) return 'is not in the order of names.';
      if (id === homeCaller.owner || !isNew(ids.members, id)) return 'has an id that is taken.';
      member = next;
      return undefined;
    },
    token({ id, scopes }) {
      if (section !== 'members' || member === undefined) return 'is a token that follows no member.';
      if (new Set(scopes).size !== scopes.length) return 'says a scope twice.';
      return isNew(ids.tokens, id) ? undefined : 'has an id that is taken.';
    },
    shelf(next) {
      if (section === 'acts') return 'is a shelf after the audit log.';
      section = 'shelves';
      const last = shelf;
      shelf = next;
      name = undefined;
      const ordered =
        !last ||
        isBefore(last.owner, next.owner) ||
        (last.owner === next.owner && isBefore(last.kind, next.kind));
      return unfinished() ?? (ordered ? undefined : 'is not in the order of owners and kinds.');
    },
    thing(next) {
      if (section !== 'shelves' || !shelf) return 'is a thing that follows no shelf.';
      const fault = unfinished();
      if (fault !== undefined) return fault;
      if (name !== undefined && !isBefore(name, next.name)) return 'is not in the order of names.';
      const shares = next.shares ?? [];
      if (shares.length > 0 && shelf.kind !== 'designs') return 'has share links, which only designs have.';
      if (!shares.every((share) => isNew(ids.shares, share.id) && isNew(ids.shares, share.secretHash)))
        return 'has a share link that is taken.';
      name = next.name;
      open = { thing: next, version: 0 };
      return undefined;
    },
    version({ version }) {
      if (!open) return 'is a version that follows nothing.';
      if (version <= open.version || version > open.thing.version) return 'is not in the order of versions.';
      if (shelf?.kind !== 'designs' && version !== open.thing.version)
        return 'is an older version, which only designs have.';
      open = { ...open, version };
      return undefined;
    },
    act({ number }) {
      section = 'acts';
      const fault = unfinished();
      if (fault !== undefined) return fault;
      if (number <= act) return 'is not in the order of numbers.';
      act = number;
      return undefined;
    },
    end() {
      ended = true;
      return unfinished();
    },
  };

  return (line) => {
    if (ended) return 'follows the end.';
    if (!begun && line.line !== 'archive') return 'must say that this is an archive of hemfold.';
    return (checks[line.line] as (line: ArchiveLine) => string | undefined)(line);
  };
}
