// Plain JavaScript for any Node from 18 on, since it runs in `prestart`.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const projectFolder = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');

/** Where the service looks for the page. */
export const builtFolder = join(projectFolder, 'built-page');

/** In the built folder: the fingerprint of what it was made from. */
export const fingerprintFile = 'made-from.txt';

/** Everything that ends up in the page, or decides how it is made. */
const sources = ['src/page', 'shared', 'package-lock.json'];

/** @returns {string[]} paths from the project's folder, in a fixed order */
function filesIn(path) {
  let entries;
  try {
    entries = readdirSync(join(projectFolder, path), { withFileTypes: true });
  } catch {
    return [path];
  }
  return entries
    .flatMap((entry) => {
      const inner = `${path}/${entry.name}`;
      return entry.isDirectory() ? filesIn(inner) : [inner];
    })
    .sort();
}

/** Changes with any source of the page. @returns {string} */
export function fingerprint() {
  const hash = createHash('sha256');
  for (const file of sources.flatMap(filesIn)) {
    hash
      .update(`${file}\0`)
      .update(readFileSync(join(projectFolder, file)))
      .update('\0');
  }
  return hash.digest('hex');
}

/** @returns {string | undefined} what the page that is there was made from */
export function builtFrom(folder = builtFolder) {
  try {
    return readFileSync(join(folder, fingerprintFile), 'utf8').trim();
  } catch {
    return undefined;
  }
}
