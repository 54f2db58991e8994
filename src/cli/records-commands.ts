import type { Command } from 'commander';
import type { RecordsWork } from './records/run-with-records.ts';
import type { ExitCode } from './run-spec-command.ts';

interface Terminal {
  readonly show: (text: string) => void;
  readonly report: (text: string) => void;
  readonly setExitCode: (code: ExitCode) => void;
}

const where = `
Works on the store of DATA_DIR or DATABASE_URL, also while the service runs.`;

/** The commands on everything that is kept: members, their tokens, and all of it as one file. */
export function recordsCommands(program: Command, { show, report, setExitCode }: Terminal): void {
  /** Each command loads what it needs when it runs, so that the help stays quick. */
  const run = async (work: () => Promise<RecordsWork>) => {
    const { runWithRecords } = await import('./records/run-with-records.ts');
    setExitCode(await runWithRecords(await work(), { show, report }));
  };
  const memberWork = () => import('./records/member-work.ts');
  const tokenWork = () => import('./records/token-work.ts');
  const archiveWork = () => import('./records/archive-work.ts');

  const members = program
    .command('members')
    .description('who belongs to the group that uses the service')
    .addHelpText('after', where);
  members
    .command('list')
    .description('every member, by name')
    .action(() => run(async () => (await memberWork()).listMembers()));
  members
    .command('add')
    .description('add a member, and show the member’s first token, this once')
    .argument('<name>', 'what the member is called')
    .option('--scopes <list>', 'what the token may do: read, write, admin', 'read,write')
    .option('--expires <time>', 'when the token ends, as 2026-12-31 or 2026-12-31T18:00:00Z')
    .option('--note <text>', 'what the token is for')
    .option('--with-home-things', 'give the member all that was kept while nobody signed in')
    .action((name: string, options) => run(async () => (await memberWork()).addMember(name, options)));
  for (const [verb, active, description] of [
    ['suspend', false, 'take no token of a member any more, and keep everything'],
    ['resume', true, 'take the tokens of a suspended member again'],
  ] as const)
    members
      .command(verb)
      .description(description)
      .argument('<name>', 'what the member is called')
      .action((name: string) => run(async () => (await memberWork()).setActive(name, active)));
  members
    .command('remove')
    .description('remove a member with everything that the member keeps')
    .argument('<name>', 'what the member is called')
    .action((name: string) => run(async () => (await memberWork()).removeMember(name)));

  const tokens = program
    .command('tokens')
    .description('what members show to be known')
    .addHelpText('after', where);
  tokens
    .command('list')
    .description('the tokens of a member, without their secrets')
    .argument('<name>', 'what the member is called')
    .action((name: string) => run(async () => (await tokenWork()).listTokens(name)));
  tokens
    .command('add')
    .description('make a token for a member, and show it, this once')
    .argument('<name>', 'what the member is called')
    .option('--scopes <list>', 'what it may do: read, write, admin', 'read,write')
    .option('--expires <time>', 'when it ends, as 2026-12-31 or 2026-12-31T18:00:00Z')
    .option('--note <text>', 'what it is for')
    .action((name: string, options) => run(async () => (await tokenWork()).addToken(name, options)));
  tokens
    .command('revoke')
    .description('take a token no more, and sign out the browsers that used it')
    .argument('<id>', 'the id of the token: its part between hemfold_ and the next _')
    .action((id: string) => run(async () => (await tokenWork()).revokeToken(id)));

  program
    .command('export')
    .description('write everything that is kept, of everybody, to one file')
    .argument('<file>', 'the file to write; - for standard output')
    .addHelpText('after', where)
    .action((file: string) => run(async () => (await archiveWork()).exportTo(file)));
  program
    .command('restore')
    .description('put the content of an exported file in the place of everything')
    .argument('<file>', 'the file that was exported; - for standard input')
    .option('--replace', 'do so also where something is kept, which is then gone')
    .addHelpText('after', where)
    .action((file: string, options) => run(async () => (await archiveWork()).restoreFrom(file, options)));
}
