import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { proofOf } from '../../shared/folding/proof-of.ts';
import type { ViewName } from '../../shared/views/view-name.ts';
import { pictureOf } from '../../shared/views/views.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { writePicture } from '../../src/svg/write-picture.ts';
import { solved } from '../support/solved.ts';
import { styleCases } from '../support/styles/index.ts';

/*
 * A drawing and two pictures of every style that somebody has looked at and found good. After a wanted change, run this
 * with HEMFOLD_APPROVE=1, look at every file that changed, and only then commit it.
 */
const approving = process.env.HEMFOLD_APPROVE === '1' && process.env.CI === undefined;
const folder = new URL('../approved/styles/', import.meta.url);

const files = styleCases.flatMap(({ style, example }) => {
  const picture = (view: ViewName) => () => {
    const shown = pictureOf(proofOf(solved(example)), view);
    if (!shown) throw new Error(`${style} has no ${view}`);
    return writePicture(shown);
  };
  return [
    [`${style}.svg`, () => svgOfFolder(solved.spec(example))] as const,
    [`${style}.half-open.svg`, picture('half-open')] as const,
    [`${style}.closed.svg`, picture('closed')] as const,
  ];
});

test.each(files)('%s', (name, draw) => {
  const text = draw();
  if (approving) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(new URL(name, folder), text);
  }
  expect(text).toBe(readFileSync(new URL(name, folder), 'utf8'));
});

test('no approved file is left that nobody compares', () => {
  expect(readdirSync(folder).toSorted()).toEqual(files.map(([name]) => name).toSorted());
});
