import { readWith } from '../problem/read-with.ts';
import { asJson, optionsOf, type SpecCommand } from './spec-command.ts';

/** A folder's spec as it is read, and the fonts that it asks for. */
async function folderIn(spec: unknown) {
  const { folderSpec } = await import('../../shared/spec/folder-spec.ts');
  const { fontsFor } = await import('../folders/fonts-for.ts');
  const read = readWith(folderSpec, spec);
  return { read, fonts: await fontsFor(read) };
}

/** Every command that takes a folder's spec; each loads what it needs when it runs, so that the help stays quick. */
export const folderCommands: readonly SpecCommand[] = [
  {
    name: 'plan',
    takes: 'folder',
    summary: 'the solved dimensions, with reasons and other ways, as JSON',
    run: async (spec) => {
      const { planFolder } = await import('../folders/plan-folder.ts');
      const { read, fonts } = await folderIn(spec);
      return asJson(planFolder(read, fonts));
    },
  },
  {
    name: 'svg',
    takes: 'folder',
    summary: 'the layered SVG for a cutting machine',
    options: optionsOf({
      piece: ['folder, or a piece of second paper such as inlay-1, as a plan lists them', 'folder'],
    }),
    run: async (spec, { piece = 'folder' }) => {
      const { svgOfFolder } = await import('../folders/svg-of-folder.ts');
      const { svgOfPiece } = await import('../folders/svg-of-piece.ts');
      const { read, fonts } = await folderIn(spec);
      return piece === 'folder' ? svgOfFolder(read, fonts) : svgOfPiece(read, piece, fonts);
    },
  },
  {
    name: 'fold',
    takes: 'folder',
    summary: 'the crease pattern and the folded forms, as FOLD 1.2',
    run: async (spec) => {
      const { foldOfFolder } = await import('../folders/fold-of-folder.ts');
      const { read, fonts } = await folderIn(spec);
      return `${JSON.stringify(foldOfFolder(read, fonts))}\n`;
    },
  },
  {
    name: 'views',
    takes: 'folder',
    summary: 'pictures of the finished folder and its fold steps, as SVG',
    options: optionsOf({
      view: ['all, outside, inside, closed, half-open, sheet, steps, or step-1, step-2 and so on', 'all'],
    }),
    run: async (spec, options) => {
      const { viewsQuery } = await import('../../shared/views/view-name.ts');
      const { viewsOfFolder } = await import('../folders/views-of-folder.ts');
      const { read, fonts } = await folderIn(spec);
      return viewsOfFolder(read, readWith(viewsQuery, options).view, fonts);
    },
  },
  {
    name: 'guide',
    takes: 'folder',
    summary: 'the maker’s sheet, as a page or a PDF',
    options: optionsOf({
      format: ['html or pdf', 'html'],
      print: ['standard or large', 'standard'],
      machine: ['yes, or no for hand tools alone', 'yes'],
      paper: ['what a PDF is printed on, a4 or letter', 'a4'],
      template: ['yes for the blank in real size in a PDF', 'no'],
      shows: ['which face of the paper becomes the outside of the folder, outside or inside', 'outside'],
    }),
    run: async (spec, options) => {
      const { guideQuery } = await import('../../shared/guide/guide-query.ts');
      const { guideOfFolder } = await import('../guide/guide-of-folder.ts');
      const { read } = await folderIn(spec);
      return (await guideOfFolder(read, readWith(guideQuery, options), new Date())).bytes;
    },
  },
  {
    name: 'possible',
    takes: 'folder',
    summary: 'what a sheet can become, as JSON',
    run: async (spec) => {
      const { sheetQuestion } = await import('../../shared/spec/folder-spec.ts');
      const { possibleFrom } = await import('../../shared/solver/possible.ts');
      const { showPossible } = await import('../../shared/plan-reply/show-plan.ts');
      return asJson(showPossible(possibleFrom(readWith(sheetQuestion, spec))));
    },
  },
];
