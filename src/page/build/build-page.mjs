// Builds the page into a folder: first beside it, then moved in its place, so that nobody is served half a page.
import {
  chmodSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import { build } from 'vite';
import { builtFolder, fingerprint, fingerprintFile, projectFolder } from './project.mjs';
import { pageConfig } from './vite-config.mjs';

const text = /\.(?:html|js|css|svg|json|txt)$/u;

/** Every file that compresses gets a gzip and a brotli sibling, so that the service only has to send them. */
function compressIn(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) compressIn(path);
    else if (text.test(entry.name)) {
      const plain = readFileSync(path);
      writeFileSync(`${path}.gz`, gzipSync(plain, { level: 9 }));
      writeFileSync(
        `${path}.br`,
        brotliCompressSync(plain, {
          params: {
            [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_TEXT,
            [constants.BROTLI_PARAM_SIZE_HINT]: plain.length,
          },
        }),
      );
    }
  }
}

/** Moves a folder to a place where another may be; whoever builds at the same time makes the same. */
function putInPlace(made, place) {
  const aside = `${made}-old`;
  try {
    renameSync(place, aside);
  } catch {
    // there was none
  }
  try {
    renameSync(made, place);
  } catch (error) {
    if (error.code !== 'ENOTEMPTY' && error.code !== 'EEXIST') throw error;
    rmSync(made, { recursive: true, force: true });
  }
  rmSync(aside, { recursive: true, force: true });
}

/** @param {string} [place] where the built page is put; default where the service looks for it */
export async function buildPage(place = builtFolder) {
  const madeFrom = fingerprint();
  const made = mkdtempSync(`${place}-`);
  try {
    await build(pageConfig(made, projectFolder));
    compressIn(made);
    writeFileSync(join(made, fingerprintFile), `${madeFrom}\n`);
    // the folder was made for its maker's eyes alone
    chmodSync(made, 0o755);
    putInPlace(made, place);
  } catch (error) {
    rmSync(made, { recursive: true, force: true });
    throw error;
  }
}

if (process.argv[1]?.endsWith('build-page.mjs')) {
  const [, , place] = process.argv;
  await buildPage(place === undefined ? builtFolder : resolve(place));
}
