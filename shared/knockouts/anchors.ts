/** Where on a place something is put; the same words for the point of the place and for that of the figure. */
export const anchors = [
  'top left',
  'top',
  'top right',
  'left',
  'centre',
  'right',
  'bottom left',
  'bottom',
  'bottom right',
] as const;
export type Anchor = (typeof anchors)[number];
