import { execFileSync } from 'node:child_process';
import { describe } from 'vitest';
import { toolsRequired } from './dtd.ts';

/** Poppler's tools read PDF by another author's hand. */
const hasPoppler = (() => {
  try {
    execFileSync('pdfinfo', ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();

export const describeWithPoppler = describe.skipIf(!hasPoppler && !toolsRequired);

/** What one of its tools prints. */
export const poppler = (command: string, ...words: string[]): string =>
  execFileSync(command, words, { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
