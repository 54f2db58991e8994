/** A point in nanometres, x right, y down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A rigid motion of the plane: x' = a·x + c·y + tx, y' = b·x + d·y + ty. It turns paper over when ad − bc < 0. */
export interface Isometry {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly tx: number;
  readonly ty: number;
}

export const identity: Isometry = Object.freeze({ a: 1, b: 0, c: 0, d: 1, tx: 0, ty: 0 });

/** Two different points; the line runs through both and has no end. */
export interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** The reflection over a line; exact for lines along the axes and at 45°. */
export function reflection({ from, to }: Line): Isometry {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = dx * dx + dy * dy;
  const a = (dx * dx - dy * dy) / square;
  const b = (2 * dx * dy) / square;
  return { a, b, c: b, d: -a, tx: from.x - a * from.x - b * from.y, ty: from.y - b * from.x + a * from.y };
}

/** Where a motion takes a point. */
export const move = (m: Isometry, p: Point): Point => ({
  x: m.a * p.x + m.c * p.y + m.tx,
  y: m.b * p.x + m.d * p.y + m.ty,
});

/** The motion that does `first`, then `then`. */
export function compose(then: Isometry, first: Isometry): Isometry {
  const origin = move(then, { x: first.tx, y: first.ty });
  return {
    a: then.a * first.a + then.c * first.b,
    b: then.b * first.a + then.d * first.b,
    c: then.a * first.c + then.c * first.d,
    d: then.b * first.c + then.d * first.d,
    tx: origin.x,
    ty: origin.y,
  };
}

/** The motion that undoes `m`: the transposed matrix, since motions keep lengths. */
export function inverse(m: Isometry): Isometry {
  return {
    a: m.a,
    b: m.c,
    c: m.b,
    d: m.d,
    tx: -(m.a * m.tx + m.b * m.ty),
    ty: -(m.c * m.tx + m.d * m.ty),
  };
}

/** Whether the motion shows the other side of the paper. */
export const turnsOver = (m: Isometry): boolean => m.a * m.d - m.b * m.c < 0;

/** Signed distance in nanometres of a point from a line; positive to the right of it as seen (y runs down). */
export function distanceFrom({ from, to }: Line, p: Point): number {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  return (dx * (p.y - from.y) - dy * (p.x - from.x)) / Math.hypot(dx, dy);
}

/** Whole nanometres, so that points which should be one are one. */
export const rounded = (p: Point): Point => ({ x: Math.round(p.x) + 0, y: Math.round(p.y) + 0 });
