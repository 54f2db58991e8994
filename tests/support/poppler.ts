import { execFileSync } from 'node:child_process';
import { describe, test } from 'vitest';
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
export const testWithPoppler = test.skipIf(!hasPoppler && !toolsRequired);

/** What one of its tools prints. */
export const poppler = (command: string, ...words: string[]): string =>
  execFileSync(command, words, { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });

/** Every word of a file with its box, in points from its page's upper left corner. */
export function wordsOf(file: string) {
  const pages = poppler('pdftotext', '-bbox', file, '-').split('<page ').slice(1);
  return pages.map((page) => {
    const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/u.exec(page) ?? [];
    const words = page.matchAll(
      /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</gu,
    );
    return {
      width: Number(width),
      height: Number(height),
      words: [...words].map(([, left, top, right, bottom, text = '']) => ({
        left: Number(left),
        top: Number(top),
        right: Number(right),
        bottom: Number(bottom),
        text,
      })),
    };
  });
}

/**
 * The size of a word's letters in points, upright or turned: a line of DejaVu Sans is 1.164 of it. Short words, whose
 * width may be less, count by their height.
 */
export function sizeOf({
  left,
  top,
  right,
  bottom,
  text,
}: ReturnType<typeof wordsOf>[number]['words'][number]): number {
  const sides = text.length < 4 ? [bottom - top] : [right - left, bottom - top];
  return Math.min(...sides) / 1.164;
}
