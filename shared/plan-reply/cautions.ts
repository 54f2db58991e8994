/** The usual cautions, given with everything that leads to cutting. */
export const cautions: readonly string[] = Object.freeze([
  'Make a first piece from plain paper, and measure it, before you cut a good sheet.',
  'Follow the instructions of the machine’s maker and the material’s data sheet; they and local rules come before anything said here.',
  'Knives: a sharp blade, a mat larger than the cut, a metal safety rule, the other hand behind the cut. Keep fingers, hair and ribbon away from moving parts.',
  'Lasers: never leave one running alone, keep the extraction on and an extinguisher at hand. Never cut vinyl or PVC, nor a coated, foiled or glittered sheet that its data sheet does not clear.',
  'hemfold cannot check your machine or your material, and gives no settings for either.',
]);
