import { z } from 'zod';
import { type FolderSpec, styleSpecs } from '../styles/registry.ts';
import { lackingIn } from './lacking.ts';

const anyStyle = z.discriminatedUnion('style', styleSpecs);

/** What a user asks for; the only input. Reading it settles every length to whole nanometres. */
export const folderSpec = anyStyle
  .superRefine((spec, context) => {
    checkCutter(spec, context);
    const lack = lackingIn(spec);
    if (lack) context.addIssue({ code: 'custom', message: lack.message, params: { remedy: lack.remedy } });
  })
  .meta({ id: 'FolderSpec', title: 'Folder specification' });

/** A question about a sheet: a folder spec without contents and dimensions. */
export const sheetQuestion = anyStyle
  .superRefine((spec, context) => {
    checkCutter(spec, context);
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

/** Margins that leave nothing of the machine's area. */
function checkCutter({ cutter }: FolderSpec, context: z.core.$RefinementCtx<FolderSpec>): void {
  const margin = cutter?.margin ?? 0;
  if (!cutter || 2 * margin < Math.min(cutter.width, cutter.height)) return;
  context.addIssue({
    code: 'custom',
    path: ['cutter', 'margin'],
    message: 'the margins leave nothing of the cutter’s area',
    params: { remedy: 'give a margin of less than half the shorter side' },
  });
}

export type { FolderSpec };
