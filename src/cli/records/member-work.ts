import { commandLine } from '../../members/audit.ts';
import { allPages } from './all-pages.ts';
import { type RecordsWork, Refused } from './run-with-records.ts';
import { day, table } from './table.ts';
import { showNewToken } from './token-work.ts';
import { nameFrom, type TokenOptions, wishFrom } from './wish.ts';

export const noSuchMember = (name: string) => new Refused(`No member is called ${JSON.stringify(name)}.`);

const lastAdmin = () =>
  new Refused(
    'Nothing was changed, since nobody would be left to keep the group.\nGive another member a token with the scope admin first: hemfold tokens add NAME --scopes read,write,admin',
  );

export const listMembers =
  (): RecordsWork =>
  async ({ members }, { show }) => {
    const all = (await allPages((page) => members.list(page))) ?? [];
    if (all.length === 0) return show('Nobody yet. hemfold members add NAME adds somebody.\n');
    const rows = all.map(({ name, active, created }) => [
      name,
      active ? 'active' : 'suspended',
      day(created),
    ]);
    show(table([['name', 'state', 'since'], ...rows]));
  };

export const addMember =
  (text: string, options: TokenOptions & { readonly withHomeThings?: boolean }): RecordsWork =>
  async ({ members }, output) => {
    const name = nameFrom(text);
    const wish = wishFrom(options, new Date());
    const { withHomeThings = false } = options;
    const added = await members.add(commandLine, name, wish, { withHomeThings });
    if (added === 'taken') throw new Refused(`Somebody is called ${JSON.stringify(name)} already.`);
    if (added === 'full') throw new Refused('There are as many members as the service allows.');
    output.report(`${name} is a member. `);
    showNewToken(added.token, output);
  };

export const setActive =
  (text: string, active: boolean): RecordsWork =>
  async ({ members }, { report }) => {
    const name = nameFrom(text);
    if (!(await members.read(name))) throw noSuchMember(name);
    const put = await members.put(commandLine, name, { active });
    if (put === 'last-admin') throw lastAdmin();
    report(`${name} is ${active ? 'active' : 'suspended'}.\n`);
  };

export const removeMember =
  (text: string): RecordsWork =>
  async ({ members }, { report }) => {
    const name = nameFrom(text);
    const outcome = await members.remove(commandLine, name);
    if (outcome === 'absent') throw noSuchMember(name);
    if (outcome === 'last-admin') throw lastAdmin();
    report(`${name} is gone, with everything that ${name} kept.\n`);
  };
