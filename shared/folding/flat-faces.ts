import type { CreasePattern } from '../creases/crease-pattern.ts';
import { type Isometry, move, type Point, turnsOver } from '../geometry/plane.ts';
import type { FlatForm } from './fold-in-steps.ts';

/** A face where it lies in a flat form. */
export interface FlatFace {
  readonly index: number;
  readonly panel: string;
  readonly corners: readonly Point[];
  readonly lies: Isometry;
  /** The outside face of the paper is toward the viewer. */
  readonly turned: boolean;
  /** Place in the stack, 0 being the lowest. */
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Every face of a form with its corners where they lie, by face index. */
export function flatFaces(
  { faces, vertices }: CreasePattern,
  { lies, order }: FlatForm,
): readonly FlatFace[] {
  const heights: (number | undefined)[] = [];
  for (const [height, face] of order.entries()) heights[face] = height;
  return faces.map(({ vertices: corners, panel }, index) => {
    const motion = lies[index];
    const height = heights[index];
    if (!motion || height === undefined) throw new Error(`face ${index} has no place in the folded form`);
    const points = corners.map((corner) => {
      const point = vertices[corner];
      if (!point) throw new Error(`face ${index} has a corner that is no vertex`);
      return move(motion, point);
    });
    return {
      index,
      panel,
      corners: points,
      lies: motion,
      turned: turnsOver(motion),
      height,
      ...boxOf(points),
    };
  });
}

/** The smallest upright rectangle around points. */
export function boxOf(points: readonly Point[]) {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return { left, right, top, bottom };
}

/** Corners in the order in which the face lies to the right of each edge, whichever side is up. */
export const clockwise = ({ corners, turned }: FlatFace): readonly Point[] =>
  turned ? corners.toReversed() : corners;

/** Whether a point lies inside a face or on its edge. */
export function covers(face: FlatFace, x: number, y: number): boolean {
  if (x < face.left || x > face.right || y < face.top || y > face.bottom) return false;
  const { corners } = face;
  const sign = face.turned ? -1 : 1;
  for (let index = 0; index < corners.length; index++) {
    const p = corners[index];
    const q = corners[index + 1] ?? corners[0];
    if (!p || !q) return false;
    if (sign * ((q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x)) < 0) return false;
  }
  return true;
}

/** The part of the segment from `p` to `q` that runs inside a face, as shares of its length; none when empty. */
export function shareInside(face: FlatFace, p: Point, q: Point): readonly [number, number] | undefined {
  let [start, end] = [0, 1];
  const corners = clockwise(face);
  for (const [index, a] of corners.entries()) {
    const b = corners[(index + 1) % corners.length] ?? a;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const depth = ({ x, y }: Point) => ((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / length;
    const [from, to] = [depth(p), depth(q)];
    if (from <= TOUCH && to <= TOUCH) return undefined;
    if (from < TOUCH) start = Math.max(start, (TOUCH - from) / (to - from));
    if (to < TOUCH) end = Math.min(end, (from - TOUCH) / (from - to));
    if (start >= end) return undefined;
  }
  return [start, end];
}

/** Faces that overlap by less than this, in nanometres, only touch. */
export const TOUCH = 2;
