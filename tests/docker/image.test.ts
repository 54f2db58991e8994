import { spawnSync } from 'node:child_process';
import { chmodSync, globSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { describe, expect, test } from 'vitest';
import { firstSpec } from '../../src/cli/first-spec.ts';
import { projectFolder, start } from '../src/run-program.ts';
import { addressOf, putPaper } from '../src/served.ts';
import { tempFolder } from '../src/temp-folder.ts';
import { ordinaryUser } from '../support/ordinary-user.ts';
import { healthCommand } from './dockerfile.ts';
import { freePorts } from './haproxy.ts';
import { makeImage } from './image.ts';

/*
 * No container engine is needed: what docker/Dockerfile makes is made in a folder by its own instructions, closed by
 * file modes, and started by its own command as a user who owns nothing but the volume.
 */

/** The ordinary user must be able to read the project's packages, which a home folder of root may not allow. */
const mayRead = spawnSync(process.execPath, ['-e', ''], { ...ordinaryUser, cwd: projectFolder }).status === 0;

const filesIn = (folder: string) =>
  globSync('**/*', { cwd: folder, exclude: (name) => name === 'node_modules' || name === 'data' }).map(
    (name) => {
      const { mode, mtimeMs, size } = statSync(join(folder, name));
      return [name, mode, mtimeMs, size];
    },
  );

describe.skipIf(!mayRead)(
  'what the Dockerfile makes (skipped where an ordinary user may not read the project)',
  () => {
    test('serves a group as an ordinary user, and writes to nothing but its volume', {
      timeout: 240_000,
    }, async () => {
      const place = await tempFolder();
      chmodSync(place, 0o755);
      const image = makeImage(place);
      const before = filesIn(image.folder);
      expect(before.length).toBeGreaterThan(300);
      expect(readdirSync(image.folder).toSorted()).toEqual([
        'backup.mjs',
        'data',
        'dist',
        'healthcheck.mjs',
        'node_modules',
        'package.json',
      ]);

      expect(image.env).toMatchObject({ NODE_ENV: 'production', HOST: '0.0.0.0', DATA_DIR: image.volume });
      const [port = 0] = await freePorts(1);
      // loopback, where a test listens, with what any other address brings along
      const env = { ...image.env, HOST: '127.0.0.1', GROUP: 'true', PORT: String(port) };
      const run = (words: readonly string[]) => {
        const [program = '', ...rest] = words;
        expect(program).toBe('node');
        return start(process.execPath, rest, { cwd: image.folder, env, user: ordinaryUser });
      };
      const healthy = () => run(healthCommand(image.healthCheck)).ended;

      const refused = run([...image.entryPoint, ...image.command]);
      expect(await refused.ended).toBe(2);
      expect(refused.errors()).toContain('hemfold members add NAME --scopes read,write,admin');

      const added = run([...image.entryPoint, 'members', 'add', 'Tilda', '--scopes', 'read,write,admin']);
      expect(await added.ended, added.errors()).toBe(0);
      const [token] = /hemfold_\w+_[\w-]+/.exec(added.output()) ?? [];
      const signed = { authorization: `Bearer ${token}` };

      expect(await healthy()).toBe(1);
      const service = run([...image.entryPoint, ...image.command]);
      const url = await addressOf(service);
      expect(await healthy()).toBe(0);
      expect((await fetch(`${url}/v1/me`)).status).toBe(401);
      expect((await fetch(`${url}/`)).headers.get('content-type')).toContain('text/html');
      expect((await putPaper(url, 'lamp-blue', 7, signed)).status).toBe(201);
      const drawn = await fetch(`${url}/v1/folders/svg`, {
        method: 'POST',
        headers: { ...signed, 'content-type': 'application/json' },
        body: JSON.stringify(firstSpec),
      });
      expect(await drawn.text()).toContain('<svg ');

      const copy = join(image.volume, 'copy.sqlite');
      const backup = run(['node', 'backup.mjs', copy]);
      expect(await backup.ended, backup.errors()).toBe(0);
      const database = new DatabaseSync(copy, { readOnly: true });
      expect(database.prepare('pragma integrity_check').all()).toEqual([{ integrity_check: 'ok' }]);
      expect(database.prepare('select name from item').all()).toEqual([{ name: 'lamp-blue' }]);
      database.close();
      for (const words of [
        ['node', 'backup.mjs', copy],
        ['node', 'backup.mjs'],
      ])
        expect(await run(words).ended).toBeGreaterThan(0);
      const elsewhere = run(['node', 'backup.mjs', join(image.folder, 'copy.sqlite')]);
      expect([await elsewhere.ended, elsewhere.errors()]).toEqual([
        1,
        expect.stringContaining('Nothing was copied'),
      ]);

      service.child.kill('SIGTERM');
      expect(await service.ended).toBe(0);
      expect(await healthy()).toBe(1);
      expect(filesIn(image.folder)).toEqual(before);
    });
  },
);
