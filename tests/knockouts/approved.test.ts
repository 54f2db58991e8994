import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { applyConvention } from '../../shared/drawing/apply-convention.ts';
import { drawPiece } from '../../shared/drawing/draw-piece.ts';
import type { ViewName } from '../../shared/views/view-name.ts';
import { foldOrRefuse } from '../../src/folders/fold-or-refuse.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { viewsOfFolder } from '../../src/folders/views-of-folder.ts';
import { writeSvg } from '../../src/svg/write-svg.ts';
import { solved } from '../support/solved.ts';
import { type SceneName, scenes } from './scenes.ts';

/*
 * Drawings and pictures that somebody has looked at and found good. After a wanted change, run this with
 * HEMFOLD_APPROVE=1, look at every file that changed, and only then commit it.
 */
const folder = new URL('../approved/knockouts/', import.meta.url);

const spec = (name: SceneName) => solved.spec(scenes[name]);
const view = (name: SceneName, which: ViewName) => () => viewsOfFolder(spec(name), which);

function piece(name: SceneName, which: string): string {
  const drawing = drawPiece(foldOrRefuse(spec(name)), which);
  if (!drawing) throw new Error(`${name} has no ${which}`);
  return writeSvg(applyConvention(drawing));
}

const files: Readonly<Record<string, () => string>> = {
  'lamp-room.svg': () => svgOfFolder(spec('lamp-room')),
  'lamp-room.frame-1.svg': () => piece('lamp-room', 'frame-1'),
  'lamp-room.outside.svg': view('lamp-room', 'outside'),
  'lamp-room.inside.svg': view('lamp-room', 'inside'),
  'lamp-room.closed.svg': view('lamp-room', 'closed'),
  'lamp-room.half-open.svg': view('lamp-room', 'half-open'),
  'lamp-room.sheet.svg': view('lamp-room', 'sheet'),
  'too-near.outside.svg': view('too-near', 'outside'),
};

test.each(Object.entries(files))('%s', (name, draw) => {
  const file = new URL(name, folder);
  const svg = draw();
  if (process.env.HEMFOLD_APPROVE === '1' && process.env.CI === undefined) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, svg);
  }
  expect(existsSync(file), 'approve it first').toBe(true);
  expect(svg).toBe(readFileSync(file, 'utf8'));
});

test('no approved file is left that nobody compares', () => {
  expect(readdirSync(folder).toSorted()).toEqual(Object.keys(files).toSorted());
});
