import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, cpSync, mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import { projectFolder } from '../src/run-program.ts';
import { ordinaryUser } from '../support/ordinary-user.ts';
import { type Instruction, readDockerfile, type Stage, stagesOf } from './dockerfile.ts';

/** What an image would hold, as a folder. */
export interface Image {
  /** In the place of /app. */
  readonly folder: string;
  readonly env: Readonly<Record<string, string>>;
  readonly entryPoint: readonly string[];
  readonly command: readonly string[];
  readonly healthCheck: Instruction;
  /** The folder that a volume is put over: the only one that may be written to. */
  readonly volume: string;
}

const of = (stage: Stage, name: string) => stage.instructions.filter((each) => each.name === name);

function only(stage: Stage, name: string): Instruction {
  const [found] = of(stage, name);
  if (!found) throw new Error(`the Dockerfile has no ${name}`);
  return found;
}

/** A folder that holds what the build sees, and its packages; those that are not kept in the image are there, too. */
function contextIn(folder: string): void {
  mkdirSync(folder);
  const names = readFileSync(join(projectFolder, 'docker/Dockerfile.dockerignore'), 'utf8').split('\n');
  for (const name of names.filter((line) => line.startsWith('!')).map((line) => line.slice(1)))
    cpSync(join(projectFolder, name), join(folder, name), { recursive: true });
  symlinkSync(join(projectFolder, 'node_modules'), join(folder, 'node_modules'));
}

function build(stage: Stage, folder: string): void {
  for (const { words } of of(stage, 'RUN')) {
    const [program, ...rest] = words;
    if (program !== 'node') continue; // npm's part is the folder of packages
    const { status, stderr, stdout } = spawnSync(process.execPath, rest, { cwd: folder, encoding: 'utf8' });
    if (status !== 0) throw new Error(`${words.join(' ')}: ${stdout}${stderr}`);
  }
}

function copy(stage: Stage, from: string, to: string): void {
  for (const { words } of of(stage, 'COPY')) {
    const target = join(to, words.at(-1) ?? '');
    for (const word of words.slice(0, -1)) {
      const source = word.replace(/^\/build/u, from);
      const isFolder = words.at(-1)?.endsWith('/') === true;
      cpSync(source, isFolder ? join(target, basename(word)) : target, {
        recursive: true,
        verbatimSymlinks: true,
      });
    }
  }
}

/** Takes from everybody the right to write, as a file system that can only be read does. */
function close(folder: string): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) close(path);
    else if (entry.isFile()) chmodSync(path, 0o444);
  }
  chmodSync(folder, 0o555);
}

/** Folders that are closed could not be removed after the test. */
function reopen(folder: string): void {
  chmodSync(folder, 0o755);
  for (const entry of readdirSync(folder, { withFileTypes: true }))
    if (entry.isDirectory()) reopen(join(folder, entry.name));
}

/** Makes in a folder what docker/Dockerfile makes, by its own instructions. */
export function makeImage(folder: string): Image {
  const [first, last] = stagesOf(
    readDockerfile(readFileSync(join(projectFolder, 'docker/Dockerfile'), 'utf8')),
  );
  if (!first || !last) throw new Error('the Dockerfile has not two stages');
  const context = join(folder, 'build');
  const app = join(folder, only(last, 'WORKDIR').words[0] ?? '');
  contextIn(context);
  build(first, context);
  mkdirSync(app);
  copy(last, context, app);
  const volume = join(folder, only(last, 'VOLUME').words[0] ?? '');
  close(app);
  onTestFinished(() => reopen(app));
  chmodSync(volume, 0o755);
  const { uid, gid } = ordinaryUser;
  if (uid !== undefined && gid !== undefined) chownSync(volume, uid, gid);
  const env = Object.fromEntries(
    of(last, 'ENV').flatMap(({ words }) =>
      words.map((word) => {
        const [name = '', value = ''] = word.split(/=(.*)/su);
        return [name, value.startsWith('/') ? join(folder, value) : value];
      }),
    ),
  );
  if (dirname(app) !== folder) throw new Error('the image has its folder elsewhere');
  return {
    folder: app,
    env,
    entryPoint: only(last, 'ENTRYPOINT').words,
    command: only(last, 'CMD').words,
    healthCheck: only(last, 'HEALTHCHECK'),
    volume,
  };
}
