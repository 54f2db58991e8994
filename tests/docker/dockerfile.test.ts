import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectFolder } from '../src/run-program.ts';
import { brokenRules, dockerfileRules, healthCommand, readDockerfile, stagesOf } from './dockerfile.ts';

const read = (file: string) => readFileSync(join(projectFolder, file), 'utf8');
const dockerfile = read('docker/Dockerfile');

describe('docker/Dockerfile', () => {
  test('keeps every rule', () => {
    expect(brokenRules(dockerfile)).toEqual([]);
  });

  test('compiles what the package has, by the same commands', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
    const [build] = stagesOf(readDockerfile(dockerfile));
    const commands =
      build?.instructions.filter(({ name, words }) => name === 'RUN' && words[0] === 'node') ?? [];
    expect(commands.map(({ words }) => words.join(' ')).join(' && ')).toBe(scripts.prepack);
  });

  test('copies only what is there, and what .dockerignore lets through', () => {
    const [build, last] = stagesOf(readDockerfile(dockerfile));
    const letThrough = read('docker/Dockerfile.dockerignore')
      .split('\n')
      .filter((line) => line.startsWith('!'))
      .map((line) => line.slice(1));
    for (const file of letThrough) expect(existsSync(join(projectFolder, file)), file).toBe(true);
    const made = ['/build/node_modules', '/build/dist'];
    const copied = (last?.instructions ?? [])
      .filter(({ name }) => name === 'COPY')
      .flatMap(({ words }) => words.slice(0, -1))
      .filter((file) => !made.includes(file))
      .map((file) => file.replace('/build/', ''));
    const own = (build?.instructions ?? [])
      .filter(({ name, words }) => name === 'COPY' && words[0] !== '.')
      .flatMap(({ words }) => words.slice(0, -1));
    for (const file of [...copied, ...own]) expect(letThrough, file).toContain(file);
    expect(copied).toContain('docker/healthcheck.mjs');
  });

  test('asks the service’s health without a further program', () => {
    const check = readDockerfile(dockerfile).find(({ name }) => name === 'HEALTHCHECK');
    expect(check && healthCommand(check)).toEqual(['node', 'healthcheck.mjs']);
  });

  test('takes the Node that the project is tried with', () => {
    const { engines, devDependencies } = JSON.parse(read('package.json')) as {
      engines: { node: string };
      devDependencies: { node: string };
    };
    const versions = stagesOf(readDockerfile(dockerfile)).map(({ from }) => from.words[0]);
    expect(new Set(versions)).toEqual(new Set(['node:24-slim']));
    expect(devDependencies.node).toMatch(/^\^24\./);
    expect(engines.node).toBe('>=22.18');
  });

  test('keeps no package that is made for one processor or needs its install script', () => {
    const { packages } = JSON.parse(read('package-lock.json')) as {
      packages: Record<
        string,
        Partial<Record<'dev' | 'optional' | 'cpu' | 'os' | 'hasInstallScript', unknown>>
      >;
    };
    const kept = Object.entries(packages).filter(
      ([name, each]) => name !== '' && !each.dev && !each.optional,
    );
    expect(kept.length).toBeGreaterThan(50);
    const bound = kept.filter(([, each]) => each.cpu || each.os || each.hasInstallScript);
    expect(bound.map(([name]) => name)).toEqual([]);
  });
});

describe('the rules', () => {
  const broken: Readonly<Record<string, readonly [string | RegExp, string]>> = {
    'a base without a version': ['FROM node:24-slim\nWORKDIR', 'FROM node\nWORKDIR'],
    'the latest base': ['FROM node:24-slim\nWORKDIR', 'FROM node:latest\nWORKDIR'],
    'an added file': ['COPY . .', 'ADD . .'],
    'no user': ['USER node\n', ''],
    root: ['USER node\n', 'USER node\nUSER root\n'],
    'root by number': ['USER node\n', 'USER 0:0\n'],
    'a relative folder': ['WORKDIR /app', 'WORKDIR app'],
    'a copy before the folder is set': ['WORKDIR /app\n', ''],
    'no health check': [/HEALTHCHECK.*\n/, ''],
    'a health check through a shell': ['CMD ["node", "healthcheck.mjs"]', 'CMD node healthcheck.mjs'],
    'a start through a shell': ['CMD ["serve"]', 'CMD serve'],
    'a build step through a shell': [
      'RUN ["node", "src/setup/compile.mjs"]',
      'RUN node src/setup/compile.mjs',
    ],
    'a step in the last stage': ['USER node\n', 'RUN ["chmod", "-R", "a-w", "."]\nUSER node\n'],
    'a stage that is not there': ['--from=build /build/dist', '--from=made /build/dist'],
    'sources in the last stage': ['COPY --from=build /build/dist ./dist', 'COPY . .'],
    'sources before packages': ['COPY package.json package-lock.json ./\n', 'COPY . .\n'],
    'packages that are not locked': ['"npm", "ci"', '"npm", "install"'],
    'install scripts': ['"ci", "--ignore-scripts"', '"ci"'],
    'a secret': ['ENV NODE_ENV', 'ENV DATABASE_PASSWORD=lamp NODE_ENV'],
    'a maintainer': ['EXPOSE', 'MAINTAINER keeper\nEXPOSE'],
    'a system package': [
      'RUN ["node", "src/setup',
      'RUN ["apt-get", "install", "curl"]\nRUN ["node", "src/setup',
    ],
  };

  test.each(Object.entries(broken))('find %s', (_, [from, to]) => {
    const text = dockerfile.replace(from, to);
    expect(text).not.toBe(dockerfile);
    expect(brokenRules(text).length).toBeGreaterThan(0);
  });

  test('are each broken by one of these', () => {
    const found = Object.values(broken).flatMap(([from, to]) => brokenRules(dockerfile.replace(from, to)));
    expect(Object.keys(dockerfileRules).filter((rule) => !found.includes(rule))).toEqual([]);
  });
});
