import { at } from '../common/dimension.ts';
import type { Dimensions } from '../style.ts';

/*
 * Names of the dimensions, as under `dimensions` in a spec: panel width and height, spine, hem, overlap, top and
 * bottom flap.
 */
export const W = 'panel.width';
export const H = 'panel.height';
export const S = 'spine';
export const h = 'hem';
export const o = 'overlap';
export const t = 'topFlap';
export const b = 'bottomFlap';

export const dimensionNames = [
  { name: W, title: 'panel width' },
  { name: H, title: 'panel height' },
  { name: S, title: 'spine' },
  { name: h, title: 'hem' },
  { name: t, title: 'top flap' },
  { name: b, title: 'bottom flap' },
  { name: o, title: 'overlap' },
] as const;

/** The flat size. */
export const blank = (d: Dimensions) => ({
  width: 2 * at(d, W) + at(d, S) + 2 * at(d, h),
  height: 2 * at(d, H) + at(d, o),
});
