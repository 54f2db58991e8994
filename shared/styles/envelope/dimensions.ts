/*
 * Names of the dimensions, as under `dimensions` in a spec: width and height of the front, depth of the side flaps, height
 * of the back, depth of the closing flap and of its gum.
 */
export const W = 'panel.width';
export const H = 'panel.height';
export const s = 'side';
export const b = 'back';
export const f = 'flap';
export const g = 'gum';

export const dimensionNames = [
  { name: W, title: 'panel width' },
  { name: H, title: 'panel height' },
  { name: s, title: 'side flap' },
  { name: b, title: 'back' },
  { name: f, title: 'closing flap' },
  { name: g, title: 'gum' },
] as const;
