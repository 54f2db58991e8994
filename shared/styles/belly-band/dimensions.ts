/*
 * Names of the dimensions, as under `dimensions` in a spec: width of the front, height of the band, depth of its sides (0
 * where one fold makes the side), overlap of its ends.
 */
export const W = 'panel.width';
export const H = 'panel.height';
export const D = 'side';
export const o = 'overlap';

export const dimensionNames = [
  { name: W, title: 'front' },
  { name: H, title: 'band height' },
  { name: D, title: 'side' },
  { name: o, title: 'overlap' },
] as const;
