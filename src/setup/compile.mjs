// Compiles the package into dist, emptied first so that nothing of an earlier state is packed.
import { spawnSync } from 'node:child_process';
import { chmodSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const setupFolder = dirname(fileURLToPath(import.meta.url));
const projectFolder = join(setupFolder, '..', '..');
const compiler = join(projectFolder, 'node_modules', 'typescript', 'bin', 'tsc');

rmSync(join(projectFolder, 'dist'), { recursive: true, force: true });
const { status } = spawnSync(process.execPath, [compiler, '-p', join(setupFolder, 'tsconfig.pack.json')], {
  stdio: 'inherit',
});
if (status === 0) chmodSync(join(projectFolder, 'dist', 'src', 'cli', 'main.js'), 0o755);
process.exitCode = status ?? 1;
