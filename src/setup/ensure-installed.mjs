// Plain JavaScript for any Node from 18 on: it runs before the Node that the project brings along is there.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const projectFolder = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** @import { Entries } from './ensure-installed.d.mts' */

/** @returns {Entries | undefined} */
function readLock(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/** A list names what fits, or with `!` what does not; no list fits everything. */
export function fits(list, actual) {
  if (!list || list.length === 0) return true;
  if (list.includes(`!${actual}`)) return false;
  return list.every((entry) => entry.startsWith('!')) || list.includes(actual);
}

/** @type {string | undefined} */
let libc;

/** Which C library this system uses; asked once, since the report is slow to make. */
function libcHere() {
  if (libc === undefined) {
    process.report.excludeNetwork = true;
    libc = process.report.getReport().header.glibcVersionRuntime ? 'glibc' : 'musl';
  }
  return libc;
}

/**
 * The packages that the lock file wants here and that are not installed in that version.
 * @param {Entries} wanted
 * @param {Entries} present
 * @param {(path: string) => boolean} isThere
 */
export function missingPackages(wanted, present, isThere) {
  // An optional package that names no system serves one that does, so npm may leave it out with that one.
  const mayBeAbsent = ({ optional, os, cpu, libc: library }) =>
    optional &&
    ((!os && !cpu) ||
      !fits(os, process.platform) ||
      !fits(cpu, process.arch) ||
      (process.platform === 'linux' && !fits(library, libcHere())));
  return Object.entries(wanted)
    .filter(([path, entry]) => path !== '' && !entry.link)
    .filter(([path, entry]) =>
      present[path] ? present[path].version !== entry.version || !isThere(path) : !mayBeAbsent(entry),
    )
    .map(([path]) => path);
}

function isInstalled() {
  const wanted = readLock(join(projectFolder, 'package-lock.json'));
  const present = readLock(join(projectFolder, 'node_modules', '.package-lock.json'));
  if (!wanted) throw new Error('package-lock.json is missing or not readable');
  if (!present) return false;
  return (
    missingPackages(wanted, present, (path) => existsSync(join(projectFolder, path, 'package.json')))
      .length === 0
  );
}

/** The Node that is brought along comes from an install script, which a user's own npm settings may forbid. */
const nodeIsThere = () =>
  existsSync(
    join(projectFolder, 'node_modules', 'node', 'bin', process.platform === 'win32' ? 'node.exe' : 'node'),
  );

function runsTypeScript([major, minor]) {
  return major > 22 || (major === 22 && minor >= 18);
}

function ensureInstalled() {
  if (!isInstalled()) {
    process.stderr.write('hemfold: installing the packages of package-lock.json\n');
    const options = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
    const { status, error } = spawnSync('npm', options, {
      cwd: projectFolder,
      // what npm says must not become part of a drawing that a command writes to standard output
      stdio: ['inherit', process.stderr.fd, 'inherit'],
      shell: process.platform === 'win32',
    });
    if (status !== 0) {
      process.stderr.write(`hemfold: npm ci failed${error ? `: ${error.message}` : ''}\n`);
      return status ?? 1;
    }
  }
  if (!nodeIsThere() && !runsTypeScript(process.versions.node.split('.').map(Number))) {
    process.stderr.write(
      `hemfold needs Node 22.18 or later, and this is ${process.versions.node}.\n` +
        'The package "node" would bring one along, but its install script did not run: allow install scripts\n' +
        '(npm config get ignore-scripts) and run "npm ci" again, or install a later Node.\n',
    );
    return 1;
  }
  return 0;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) process.exitCode = ensureInstalled();
