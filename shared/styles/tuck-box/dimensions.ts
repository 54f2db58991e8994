/*
 * Names of the dimensions, as under `dimensions` in a spec: width and height of the front, depth of the box, depth of the
 * lid, its tuck flap, the dust flaps, the glued tab.
 */
export const W = 'panel.width';
export const H = 'panel.height';
export const D = 'depth';
export const l = 'lid';
export const k = 'tuck';
export const f = 'dustFlap';
export const g = 'tab';

export const dimensionNames = [
  { name: W, title: 'panel width' },
  { name: H, title: 'panel height' },
  { name: D, title: 'depth' },
  { name: l, title: 'lid' },
  { name: k, title: 'tuck flap' },
  { name: f, title: 'dust flap' },
  { name: g, title: 'tab' },
] as const;
