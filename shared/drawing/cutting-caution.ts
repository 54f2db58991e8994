/** Goes with every drawing for a machine, in its description. */
export const cuttingCaution =
  'Blades and lasers hurt: follow the instructions of the machine and of the material, and never leave a laser alone while it runs.';
