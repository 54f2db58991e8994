import type { Convention } from './convention.ts';

/** Whether the whole outline of a blank is cut, and not only what comes off a sheet that serves as it is. */
export const drawsOutline = (wholeSheet: boolean, outline: Convention['outline'] = 'auto'): boolean =>
  outline === 'always' || (outline === 'auto' && !wholeSheet);
