/*
 * Names of the dimensions, as under `dimensions` in a spec: width and height of the middle, both hinges, both doors, height
 * of the pocket, depth of its tabs.
 */
export const W = 'panel.width';
export const H = 'panel.height';
export const S = 'hinge';
export const S2 = 'outerHinge';
export const D = 'leftDoor';
export const D2 = 'rightDoor';
export const p = 'pocket';
export const b = 'tab';

export const dimensionNames = [
  { name: W, title: 'panel width' },
  { name: H, title: 'panel height' },
  { name: S, title: 'hinge' },
  { name: S2, title: 'outer hinge' },
  { name: D, title: 'left door' },
  { name: D2, title: 'right door' },
  { name: p, title: 'pocket height' },
  { name: b, title: 'tab' },
] as const;
