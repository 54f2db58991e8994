// Plain JavaScript for any Node from 18 on: builds the page where there is none, or where it is out of date.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { builtFrom, fingerprint, projectFolder } from './project.mjs';

if (builtFrom() !== fingerprint()) {
  process.stderr.write('hemfold: building the page\n');
  // `node` as npm's path has it by now, which is the one that the project brings along
  const { status } = spawnSync('node', [join('src', 'page', 'build', 'build-page.mjs')], {
    cwd: projectFolder,
    stdio: ['ignore', process.stderr.fd, 'inherit'],
    shell: process.platform === 'win32',
  });
  if (status !== 0)
    process.stderr.write('hemfold: the page could not be built; the service starts without it\n');
}
