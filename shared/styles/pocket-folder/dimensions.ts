/*
 * Names of the dimensions, as under `dimensions` in a spec: panel width and height, spine, height of the pockets, depth
 * of their tabs.
 */
export const W = 'panel.width';
export const H = 'panel.height';
export const S = 'spine';
export const p = 'pocket';
export const b = 'tab';

export const dimensionNames = [
  { name: W, title: 'panel width' },
  { name: H, title: 'panel height' },
  { name: S, title: 'spine' },
  { name: p, title: 'pocket height' },
  { name: b, title: 'tab' },
] as const;
