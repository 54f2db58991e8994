import type { Config } from '../config.ts';
import type { Members } from './members.ts';

/** Thrown when a group would start that nobody can keep; the message is ready for a terminal. */
export class NobodyKeepsGroup extends Error {
  override readonly name = 'NobodyKeepsGroup';
}

const message = `Members sign in to this service, and none of them could keep the group yet, so it was not started.
Add one, and put away the token that is shown:
  hemfold members add NAME --scopes read,write,admin
Whoever used it without members before takes what was kept along with --with-home-things. To use it alone,
without sign-in, let only this machine reach it: HOST=127.0.0.1, and no GROUP.`;

/** @throws {NobodyKeepsGroup} for a group without an active member whose token has the scope "admin" */
export async function requireKeeper(
  { group }: Pick<Config, 'group'>,
  members: Pick<Members, 'hasAdmin'>,
): Promise<void> {
  if (group && !(await members.hasAdmin())) throw new NobodyKeepsGroup(message);
}
