import { execFile, spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';

/** SVG 1.1 Second Edition (W3C Recommendation, 16 August 2011), appendix A.1: the DTD's public identifier. */
const PUBLIC_ID = '-//W3C//DTD SVG 1.1//EN';

const options = ['--nonet', '--noout', '--dtdvalidfpi', PUBLIC_ID];

/** Set by the CI, which has the tools: the check must not be left out there. */
export const toolsRequired = process.env.HEMFOLD_REQUIRE_TOOLS === '1';

/** Whether xmllint and the DTD (Debian: libxml2-utils and w3c-sgml-lib) are here. */
export const dtdIsHere = (): boolean =>
  spawnSync('xmllint', [...options, '-'], { input: '<svg xmlns="http://www.w3.org/2000/svg"/>' }).status ===
  0;

/**
 * Validates every file of a folder against the W3C SVG 1.1 DTD, offline, in one call.
 * @returns what the validator complains of; empty when every file is valid
 */
export function complaintsOfDtd(folder: string): Promise<string> {
  const files = readdirSync(folder).filter((name) => name.endsWith('.svg'));
  if (files.length === 0) throw new Error('there is no file to validate');
  return new Promise((resolve) => {
    execFile('xmllint', [...options, ...files], { cwd: folder, maxBuffer: 2 ** 28 }, (error, _, stderr) =>
      resolve(error ? `${stderr.slice(0, 4000)}${error.message.slice(0, 200)}` : ''),
    );
  });
}

/**
 * Many drawings as one document, since the validator reads the whole DTD again for each file. An svg element
 * may hold others; only the ids, which must differ in one document, get the drawing's number behind them, so
 * that an id that comes twice in one drawing still does.
 */
export function bundleOf(drawings: readonly string[]): string {
  const parts = drawings.map((svg, index) =>
    svg.replace(/^<\?xml[^>]*\?>\s*/u, '').replaceAll(/ id="([^"]*)"/gu, ` id="$1.${index}"`),
  );
  return `<svg xmlns="http://www.w3.org/2000/svg">\n${parts.join('')}</svg>\n`;
}
