/* Names of the dimensions, as under `dimensions` in a spec: width and height, step of a roll, gap of a gate. */
export const W = 'panel.width';
export const H = 'panel.height';
export const n = 'step';
export const g = 'gap';

export const dimensionNames = [
  { name: W, title: 'panel width' },
  { name: H, title: 'panel height' },
  { name: n, title: 'step' },
  { name: g, title: 'gap' },
] as const;
