import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { proofOf } from '../../shared/folding/proof-of.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import type { ViewName } from '../../shared/views/view-name.ts';
import { pictureOf } from '../../shared/views/views.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { writePicture } from '../../src/svg/write-picture.ts';
import { solved } from '../support/solved.ts';
import { styleCases } from '../support/styles/index.ts';

/*
 * A drawing and two pictures of every style, and of its variant with slots, that somebody has looked at and found good. After a wanted change, run this
 * with HEMFOLD_APPROVE=1, look at every file that changed, and only then commit it.
 */
const approving = process.env.HEMFOLD_APPROVE === '1' && process.env.CI === undefined;
const folder = new URL('../approved/styles/', import.meta.url);

const filesOf = (name: string, example: object, views: readonly ViewName[]) => {
  const picture = (view: ViewName) => () => {
    const shown = pictureOf(proofOf(solved(example)), view);
    if (!shown) throw new Error(`${name} has no ${view}`);
    return writePicture(shown);
  };
  return [
    [`${name}.svg`, () => svgOfFolder(solved.spec(example))] as const,
    ...views.map((view) => [`${name}.${view}.svg`, picture(view)] as const),
  ];
};

/** Styles that leave the choice of how tabs are held, with slots. */
const slotted = styleCases.filter(
  ({ example }) => folderSpec.safeParse({ ...example, join: 'slots' }).success,
);

const files = [
  ...styleCases.flatMap(({ style, example }) => filesOf(style, example, ['half-open', 'closed'])),
  ...slotted.flatMap(({ style, example }) =>
    filesOf(`${style}.slots`, { ...example, join: 'slots' }, ['closed', 'steps']),
  ),
];

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
