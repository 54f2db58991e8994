import type { GlueStep } from './fold-program.ts';

/** Nanometres of tape or of a line of glue that a step takes. */
export const glueLength = ({ strips, width }: GlueStep): number =>
  strips.reduce((sum, { left, right, top, bottom }) => sum + ((right - left) * (bottom - top)) / width, 0);

/** What is bought for what is needed; common practice. */
const withWaste = 1.1;

/** Nanometres of tape or glue for one folder, with what is lost at the ends. */
export const tapeLength = (steps: readonly GlueStep[]): number =>
  withWaste * steps.reduce((sum, step) => sum + glueLength(step), 0);
