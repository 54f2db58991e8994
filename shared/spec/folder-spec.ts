import { z } from 'zod';
import { type FolderSpec, styleSpecs } from '../styles/registry.ts';

const anyStyle = z.discriminatedUnion('style', styleSpecs);

/** What a user asks for; the only input. Reading it settles every length to whole nanometres. */
export const folderSpec = anyStyle
  .superRefine((spec, context) => {
    if (spec.contents !== undefined || hasDimension(spec.dimensions)) return;
    context.addIssue({
      code: 'custom',
      message: 'neither contents nor dimensions are given',
      params: {
        remedy:
          'say what goes in, or fix at least one dimension; POST /v1/folders/possible lists what a sheet can become',
      },
    });
  })
  .meta({ id: 'FolderSpec', title: 'Folder specification' });

/** A question about a sheet: a folder spec without contents and dimensions. */
export const sheetQuestion = anyStyle
  .superRefine((spec, context) => {
    if (spec.stock === undefined) {
      context.addIssue({
        code: 'custom',
        path: ['stock'],
        message: 'the sheet is missing',
        params: { remedy: 'give one sheet as stock, by size or by width and height' },
      });
    }
    for (const member of ['contents', 'dimensions'] as const) {
      if (spec[member] === undefined) continue;
      context.addIssue({
        code: 'custom',
        path: [member],
        message: `${member} are what this call finds out`,
        params: { remedy: 'leave them out, or ask for a plan' },
      });
    }
  })
  .meta({ id: 'SheetQuestion', title: 'What can a sheet become?' });

const hasDimension = (value: unknown): boolean =>
  typeof value === 'object' && value !== null ? Object.values(value).some(hasDimension) : value !== undefined;

export type { FolderSpec };
