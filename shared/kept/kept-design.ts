import { z } from 'zod';
import { folderSpec } from '../spec/folder-spec.ts';

const line = (most: number) =>
  z
    .string()
    .trim()
    .min(1)
    .max(most)
    .regex(/^\P{C}*$/u, 'control characters are not kept');

/** What may be said about a design; all of it is shown to whoever has a link to it. */
export const aboutDesign = {
  title: line(120).meta({
    description: 'What people call the design.',
    examples: ['Thank-you folder of the museum shop'],
  }),
  notes: z
    .string()
    .max(4000)
    .optional()
    .meta({ description: 'Whatever its makers should know, as plain text.' }),
  credit: line(200).optional().meta({ description: 'Whose work it is.' }),
  licence: line(120)
    .optional()
    .meta({
      description: 'What others may do with it, best as an SPDX expression.',
      examples: ['CC-BY-4.0'],
    }),
};

/** A design to keep: a folder spec with what there is to say about it. Names in the spec stay names. */
export const keptDesign = z
  .strictObject({ ...aboutDesign, spec: folderSpec })
  .meta({ id: 'KeptDesign', title: 'A design to keep' });
