/*
 * Names of the dimensions, as under `dimensions` in a spec: width and height of the base, the hinges of the side flaps, the
 * bottom flap and the top flap, and how far each flap reaches over.
 */
export const W = 'panel.width';
export const H = 'panel.height';
export const e1 = 'hinge';
export const e2 = 'bottomHinge';
export const e3 = 'topHinge';
export const s = 'sideFlap';
export const b = 'bottomFlap';
export const t = 'topFlap';

export const dimensionNames = [
  { name: W, title: 'panel width' },
  { name: H, title: 'panel height' },
  { name: e1, title: 'hinge' },
  { name: e2, title: 'bottom hinge' },
  { name: e3, title: 'top hinge' },
  { name: s, title: 'side flap' },
  { name: b, title: 'bottom flap' },
  { name: t, title: 'top flap' },
] as const;
