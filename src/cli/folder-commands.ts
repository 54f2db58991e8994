import { readWith } from '../problem/read-with.ts';

/** A choice that a command leaves to its caller besides the spec. */
export interface CommandOption {
  readonly name: string;
  readonly summary: string;
  readonly fallback: string;
}

/** A command that turns one spec into one file. */
export interface FolderCommand {
  readonly name: string;
  readonly summary: string;
  readonly options?: readonly CommandOption[];
  /**
   * @param spec the parsed JSON, not yet checked
   * @param options the text given for each option, not yet checked
   * @returns the text or bytes of the file
   * @throws {InvalidInput | ZodError | CannotBeFolded} for a spec that is refused
   */
  readonly run: (
    spec: unknown,
    options: Readonly<Record<string, string>>,
  ) => string | Uint8Array | Promise<string | Uint8Array>;
}

const asJson = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

/** Every command that takes a spec; each loads what it needs when it runs, so that the help stays quick. */
export const folderCommands: readonly FolderCommand[] = [
  {
    name: 'plan',
    summary: 'the solved dimensions, with reasons and other ways, as JSON',
    run: async (spec) => {
      const { folderSpec } = await import('../../shared/spec/folder-spec.ts');
      const { planFolder } = await import('../folders/plan-folder.ts');
      const { fontsFor } = await import('../folders/fonts-for.ts');
      const read = readWith(folderSpec, spec);
      return asJson(planFolder(read, await fontsFor(read)));
    },
  },
  {
    name: 'svg',
    summary: 'the layered SVG for a cutting machine',
    options: [
      {
        name: 'piece',
        summary: 'folder, or a piece of second paper such as inlay-1, as a plan lists them',
        fallback: 'folder',
      },
    ],
    run: async (spec, { piece = 'folder' }) => {
      const { folderSpec } = await import('../../shared/spec/folder-spec.ts');
      const { svgOfFolder } = await import('../folders/svg-of-folder.ts');
      const { svgOfPiece } = await import('../folders/svg-of-piece.ts');
      const { fontsFor } = await import('../folders/fonts-for.ts');
      const read = readWith(folderSpec, spec);
      const fonts = await fontsFor(read);
      return piece === 'folder' ? svgOfFolder(read, fonts) : svgOfPiece(read, piece, fonts);
    },
  },
  {
    name: 'fold',
    summary: 'the crease pattern and the folded forms, as FOLD 1.2',
    run: async (spec) => {
      const { folderSpec } = await import('../../shared/spec/folder-spec.ts');
      const { foldOfFolder } = await import('../folders/fold-of-folder.ts');
      const { fontsFor } = await import('../folders/fonts-for.ts');
      const read = readWith(folderSpec, spec);
      return `${JSON.stringify(foldOfFolder(read, await fontsFor(read)))}\n`;
    },
  },
  {
    name: 'views',
    summary: 'pictures of the finished folder and its fold steps, as SVG',
    options: [
      {
        name: 'view',
        summary: 'all, outside, inside, closed, half-open, steps, or step-1, step-2 and so on',
        fallback: 'all',
      },
    ],
    run: async (spec, options) => {
      const { folderSpec } = await import('../../shared/spec/folder-spec.ts');
      const { viewsQuery } = await import('../../shared/views/view-name.ts');
      const { viewsOfFolder } = await import('../folders/views-of-folder.ts');
      const { fontsFor } = await import('../folders/fonts-for.ts');
      const read = readWith(folderSpec, spec);
      return viewsOfFolder(read, readWith(viewsQuery, options).view, await fontsFor(read));
    },
  },
  {
    name: 'possible',
    summary: 'what a sheet can become, as JSON',
    run: async (spec) => {
      const { sheetQuestion } = await import('../../shared/spec/folder-spec.ts');
      const { possibleFrom } = await import('../../shared/solver/possible.ts');
      const { showPossible } = await import('../../shared/plan-reply/show-plan.ts');
      return asJson(showPossible(possibleFrom(readWith(sheetQuestion, spec))));
    },
  },
];
