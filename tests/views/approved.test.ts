import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import type { ViewName } from '../../shared/views/view-name.ts';
import { type ExampleName, written } from './shown.ts';

/*
 * Pictures that somebody has looked at and found good. After a wanted change, run the tests with HEMFOLD_APPROVE=1,
 * look at every file that changed, and only then commit it.
 */
const pictures: readonly (readonly [ExampleName, ViewName])[] = [
  ['hems-out', 'outside'],
  ['hems-out', 'inside'],
  ['hems-out', 'closed'],
  ['hems-out', 'half-open'],
  ['hems-out', 'step-8'],
  ['hems-out', 'step-11'],
  ['hems-out', 'step-16'],
  ['hems-in', 'inside'],
  ['hems-in', 'half-open'],
  ['hems-in', 'steps'],
  ['mitred', 'inside'],
  ['mitred', 'step-1'],
  ['flat-seam', 'step-6'],
  ['tiny-hems', 'inside'],
  ['tiny-hems', 'closed'],
  ['a6-on-a3', 'all'],
  ['turned', 'outside'],
  ['head-to-foot', 'inside'],
];

/** Where two texts first differ, with a little of both; empty for equal ones. */
function differenceOf(text: string, approved: string): string {
  if (text === approved) return '';
  const at = [...text].findIndex((letter, index) => letter !== approved[index]);
  const start = Math.max(0, (at < 0 ? text.length : at) - 40);
  return `now …${text.slice(start, start + 120)}… instead of …${approved.slice(start, start + 120)}…`;
}

test('a difference is found, also at the end', () => {
  expect(differenceOf('<svg/>', '<svg/>')).toBe('');
  expect(differenceOf('<svg/>', '<svg>')).toContain('<svg/>');
  expect(differenceOf('<svg', '<svg/>')).toContain('instead of');
});

test.each(pictures)('%s, %s', (name, view) => {
  const file = fileURLToPath(new URL(`../approved/views/${name}.${view}.svg`, import.meta.url));
  const svg = written(name, view);
  if (process.env.HEMFOLD_APPROVE === '1') {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, svg);
  }
  expect(existsSync(file), 'approve it first').toBe(true);
  expect(differenceOf(svg, readFileSync(file, 'utf8'))).toBe('');
});
