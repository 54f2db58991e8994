/** A rectangle to be placed, `count` times at most. Lengths in whole units of any size, the same for all. */
export interface Box {
  readonly width: number;
  readonly height: number;
  readonly count: number;
  /** Whether it may be turned by a quarter. */
  readonly turns: boolean;
}

/** Where one copy of a box lies: its corner nearest the origin, and its sides as it lies. */
export interface Spot {
  /** Number of the box in the list that was given. */
  readonly box: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

/** One way in which a box may lie. */
export interface Pose {
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

/** The one or two ways in which a box can lie; a square has one. */
export function poses({ width, height, turns }: Box): readonly Pose[] {
  const upright = { width, height, turned: false };
  return turns && width !== height ? [upright, { width: height, height: width, turned: true }] : [upright];
}

/** The poses that stay within a rectangle. */
export const posesWithin = (box: Box, width: number, height: number): readonly Pose[] =>
  poses(box).filter((pose) => pose.width <= width && pose.height <= height);

export const areaOf = ({ width, height }: Pick<Box, 'width' | 'height'>): number => width * height;

export const totalArea = (boxes: readonly Box[]): number =>
  boxes.reduce((sum, box) => sum + box.count * areaOf(box), 0);
