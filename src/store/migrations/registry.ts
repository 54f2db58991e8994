import type { RawBuilder } from 'kysely';
import type { Migration } from 'kysely/migration';
import { members } from './members.ts';
import { shelves } from './shelves.ts';

/**
 * Every step from an empty database to the tables of this version, in the order of their keys. A step that was
 * released is never changed: what follows is a new step.
 */
export const migrations = (keyText: RawBuilder<unknown>): Readonly<Record<string, Migration>> => ({
  '001-shelves': shelves(keyText),
  '002-members': members(keyText),
});
