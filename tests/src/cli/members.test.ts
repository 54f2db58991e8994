import { statSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { buildProgram } from '../../../src/cli/program.ts';
import { homeCaller } from '../../../src/members/caller.ts';
import { openRecords } from '../../../src/records.ts';
import { runHemfold, startHemfold } from '../run-program.ts';
import { tempFolder } from '../temp-folder.ts';

/** Runs the command line in this process, on a folder of its own; much quicker than a process each time. */
const hemfoldIn =
  (folder: string) =>
  async (...words: readonly string[]) => {
    vi.stubEnv('DATA_DIR', folder);
    vi.stubEnv('DATABASE_URL', '');
    vi.stubEnv('GROUP', '');
    const said = { code: -1, output: '', errors: '' };
    const program = buildProgram({
      show: (text) => {
        said.output += text;
      },
      report: (text) => {
        said.errors += text;
      },
      setExitCode: (code) => {
        said.code = code;
      },
    });
    await program.parseAsync(['node', 'hemfold', ...words]);
    vi.unstubAllEnvs();
    return said;
  };

const tokenLine = /^hemfold_[\da-f]{20}_[\w-]{43}\n$/;

describe('hemfold members and tokens', () => {
  test('add, list, suspend, resume and remove; a new token goes to standard output alone', async () => {
    const hemfold = hemfoldIn(await tempFolder());
    expect((await hemfold('members', 'list')).output).toContain('Nobody yet');
    const ada = await hemfold('members', 'add', 'Ada', '--scopes', 'read,write,admin');
    expect(ada.output).toMatch(tokenLine);
    expect(ada.errors).toBe('Ada is a member. This token may read, write, admin, and is shown only now:\n');
    const bo = await hemfold('members', 'add', 'Bo', '--expires', '2099-01-01', '--note', 'laptop');
    expect(bo.errors).toContain('may read, write until 2099-01-01T00:00:00.000Z');
    expect((await hemfold('members', 'suspend', 'Bo')).errors).toBe('Bo is suspended.\n');
    const list = await hemfold('members', 'list');
    expect(list.output).toMatch(
      /^name {2}state {6}since\nAda {3}active {5}\d{4}-\d\d-\d\d\nBo {4}suspended {2}/,
    );
    expect((await hemfold('members', 'resume', 'Bo')).errors).toBe('Bo is active.\n');
    expect((await hemfold('members', 'remove', 'Bo')).errors).toContain('Bo is gone');
    expect((await hemfold('members', 'list')).output).not.toContain('Bo');
  });

  test('tokens are made, listed without their secrets, and revoked', async () => {
    const hemfold = hemfoldIn(await tempFolder());
    await hemfold('members', 'add', 'Ada');
    const { output } = await hemfold('tokens', 'add', 'Ada', '--scopes', 'read', '--note', 'laptop');
    const [, id = '', secret = ''] = /^hemfold_([\da-f]+)_([\w-]+)\n$/.exec(output) ?? [];
    const list = (await hemfold('tokens', 'list', 'Ada')).output;
    expect(list).toMatch(new RegExp(`${id} {2}read +lasting +– +laptop`));
    expect(list).not.toContain(secret);
    expect((await hemfold('tokens', 'revoke', id)).errors).toBe('The token is revoked.\n');
    expect((await hemfold('tokens', 'list', 'Ada')).output).toMatch(
      new RegExp(`${id} {2}read +revoked \\d{4}-`),
    );
  });

  test('what cannot be done leaves 2 and a reason', async () => {
    const folder = await tempFolder();
    const hemfold = hemfoldIn(folder);
    await hemfold('members', 'add', 'Ada', '--scopes', 'admin');
    const refused = async (...words: readonly string[]) => {
      const { code, output, errors } = await hemfold(...words);
      expect({ code, output }).toEqual({ code: 2, output: '' });
      return errors;
    };
    expect(await refused('members', 'add', 'Ada')).toContain('Somebody is called "Ada" already.');
    expect(await refused('members', 'add', '../x')).toContain('a name has 1 to 80 letters');
    expect(await refused('members', 'add', 'Bo', '--scopes', 'root')).toContain(
      'known here: read, write, admin',
    );
    expect(await refused('members', 'add', 'Bo', '--expires', '2020-01-01')).toContain('give a later time');
    expect(await refused('members', 'remove', 'Ada')).toContain('hemfold tokens add NAME');
    expect(await refused('members', 'suspend', 'Bo')).toContain('No member is called "Bo".');
    expect(await refused('tokens', 'list', 'Bo')).toContain('No member is called "Bo".');
    expect(await refused('tokens', 'revoke', 'none')).toContain('No token has the id "none".');
    const broken = await hemfoldIn(join(folder, 'hemfold.sqlite', 'x'))('members', 'list');
    expect([broken.code, broken.errors]).toEqual([
      1,
      expect.stringContaining('choose another with DATA_DIR'),
    ]);
  });
});

describe('hemfold export and restore', () => {
  test('move everything, by a file for its owner alone', async () => {
    const folder = await tempFolder();
    const [from, to] = [hemfoldIn(join(folder, 'a')), hemfoldIn(join(folder, 'b'))];
    const file = join(folder, 'all.ndjson');
    await from('members', 'add', 'Ada', '--scopes', 'admin');
    await writeFile(file, 'an older one');
    expect(await from('export', file)).toEqual({ code: 0, output: '', errors: '' });
    expect((statSync(file).mode & 0o777).toString(8)).toBe('600');
    expect(await to('restore', file)).toEqual({
      code: 0,
      output: '',
      errors: 'Restored: 1 members, 0 things, 0 versions.\n',
    });
    expect((await to('members', 'list')).output).toContain('Ada');
    const again = await to('restore', file);
    expect([again.code, again.errors]).toEqual([2, expect.stringContaining('With --replace')]);
    expect((await to('restore', file, '--replace')).code).toBe(0);

    const env = (name: string) => ({ env: { DATA_DIR: join(folder, name), DATABASE_URL: '' } });
    const piped = await runHemfold(['export', '-'], env('a'));
    expect(piped.output).toContain('"line":"end"');
    const fed = await runHemfold(['restore', '-', '--replace'], { ...env('b'), input: piped.output });
    expect(fed.code).toBe(0);

    await writeFile(file, (await readFile(file, 'utf8')).replace('"Ada"', '"Eve"'));
    const bad = await to('restore', file, '--replace');
    expect([bad.code, bad.errors]).toEqual([2, expect.stringContaining('its hash differs')]);
    const missing = await to('restore', join(folder, 'none'));
    expect([missing.code, missing.errors]).toEqual([1, expect.stringContaining('there is no such file')]);
    const nowhere = await from('export', join(folder, 'none', 'x'));
    expect([nowhere.code, nowhere.errors]).toEqual([1, expect.stringContaining('Cannot write')]);
  });
});

describe('hemfold serve --group', () => {
  test('starts once somebody may keep the group, and answers members alone', async () => {
    const folder = await tempFolder();
    const hemfold = hemfoldIn(folder);
    await hemfold('members', 'add', 'Bo');
    const refused = await hemfold('serve', '--group', '--port', '0');
    expect([refused.code, refused.output]).toEqual([2, '']);
    expect(refused.errors).toContain('hemfold members add NAME --scopes read,write,admin');

    const records = openRecords({ dataDir: folder, databaseUrl: undefined }, () => new Date());
    await records.store.put(homeCaller.owner, 'cutters', 'attic', { width: '12 in', height: '24 in' }, 'any');
    await records.close();
    const added = await hemfold('members', 'add', 'Ada', '--scopes', 'read,admin', '--with-home-things');
    const run = startHemfold(['serve', '--group', '--port', '0'], {
      env: { DATA_DIR: folder, DATABASE_URL: '' },
    });
    await expect.poll(() => run.output() + run.errors(), { timeout: 40_000 }).toContain('Ctrl+C');
    const [, url = ''] = /group at (\S+)/.exec(run.output()) ?? [];
    const headers = { authorization: `Bearer ${added.output.trim()}` };
    const me = await fetch(`${url}/v1/me`, { headers });
    expect(await me.json()).toMatchObject({ mode: 'group', name: 'Ada' });
    expect((await fetch(`${url}/v1/me`)).status).toBe(401);
    expect(await (await fetch(`${url}/v1/cutters/attic`, { headers })).json()).toMatchObject({
      width: '12 in',
    });

    const [, id = ''] = added.output.split('_');
    await hemfold('members', 'add', 'Cyd', '--scopes', 'admin');
    await hemfold('tokens', 'revoke', id);
    expect((await fetch(`${url}/v1/me`, { headers })).status, 'the command line is heard at once').toBe(401);
    run.child.kill('SIGTERM');
    expect(await run.ended).toBe(0);
  });
});
