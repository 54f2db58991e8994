import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';

/** SVG 1.1 Second Edition (W3C Recommendation, 16 August 2011), appendix A.1: the DTD's public identifier. */
const PUBLIC_ID = '-//W3C//DTD SVG 1.1//EN';

/** The checker must not be left out: the CI has the tools. */
export const toolsRequired = process.env.HEMFOLD_REQUIRE_TOOLS === '1';

/** Whether xmllint and the DTD (Debian: libxml2-utils and w3c-sgml-lib) are here. */
export function dtdIsHere(): boolean {
  const smallest = '<svg xmlns="http://www.w3.org/2000/svg"/>';
  const run = spawnSync('xmllint', ['--nonet', '--noout', '--dtdvalidfpi', PUBLIC_ID, '-'], {
    input: smallest,
  });
  return run.status === 0;
}

/**
 * Validates every file of a folder against the W3C SVG 1.1 DTD, offline, in one call.
 * @returns what the validator complains of; empty when every file is valid
 */
export function complaintsOfDtd(folder: string): string {
  const files = readdirSync(folder).filter((name) => name.endsWith('.svg'));
  if (files.length === 0) throw new Error('there is no file to validate');
  try {
    execFileSync('xmllint', ['--nonet', '--noout', '--dtdvalidfpi', PUBLIC_ID, ...files], {
      cwd: folder,
      stdio: ['ignore', 'ignore', 'pipe'],
      maxBuffer: 2 ** 28,
    });
    return '';
  } catch (error) {
    const { stderr } = error as { stderr?: Buffer };
    return String(stderr ?? error).slice(0, 4000) || String(error);
  }
}
