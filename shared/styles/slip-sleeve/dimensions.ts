/* Names of the dimensions, as under `dimensions` in a spec: width and height, depth of the tabs, radius of the notch. */
export const W = 'panel.width';
export const H = 'panel.height';
export const b = 'tab';
export const r = 'notch';

export const dimensionNames = [
  { name: W, title: 'width' },
  { name: H, title: 'height' },
  { name: b, title: 'tab' },
  { name: r, title: 'thumb notch' },
] as const;
