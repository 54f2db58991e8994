/** A point in nanometres: x right, y down, z toward the viewer with the inside face up. */
export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * A rigid motion of space: x' = xx·x + xy·y + xz·z + x0, and so on. Points are columns: the motion that is
 * done later stands on the left.
 */
export interface Motion {
  readonly xx: number;
  readonly xy: number;
  readonly xz: number;
  readonly x0: number;
  readonly yx: number;
  readonly yy: number;
  readonly yz: number;
  readonly y0: number;
  readonly zx: number;
  readonly zy: number;
  readonly zz: number;
  readonly z0: number;
}

/** Where a motion takes a point. */
export const carry = (m: Motion, { x, y, z }: Point3): Point3 => ({
  x: m.xx * x + m.xy * y + m.xz * z + m.x0,
  y: m.yx * x + m.yy * y + m.yz * z + m.y0,
  z: m.zx * x + m.zy * y + m.zz * z + m.z0,
});

/** Where a motion turns a direction. */
export const carryDirection = (m: Motion, { x, y, z }: Point3): Point3 => ({
  x: m.xx * x + m.xy * y + m.xz * z,
  y: m.yx * x + m.yy * y + m.yz * z,
  z: m.zx * x + m.zy * y + m.zz * z,
});

export const minus = (p: Point3, q: Point3): Point3 => ({ x: p.x - q.x, y: p.y - q.y, z: p.z - q.z });

/** The scalar product. */
export const times = (p: Point3, q: Point3): number => p.x * q.x + p.y * q.y + p.z * q.z;

/** The vector product. */
export const cross = (p: Point3, q: Point3): Point3 => ({
  x: p.y * q.z - p.z * q.y,
  y: p.z * q.x - p.x * q.z,
  z: p.x * q.y - p.y * q.x,
});

/** Twice the area of a plane polygon as a vector square to it (Newell's method). */
export function areaOf(corners: readonly Point3[]): Point3 {
  const [origin = { x: 0, y: 0, z: 0 }] = corners;
  let [x, y, z] = [0, 0, 0];
  for (const [index, corner] of corners.entries()) {
    const next = corners[(index + 1) % corners.length] ?? corner;
    const part = cross(minus(corner, origin), minus(next, origin));
    x += part.x;
    y += part.y;
    z += part.z;
  }
  return { x, y, z };
}

/** The motion that does `first`, then `then`. */
export const after = (then: Motion, first: Motion): Motion => ({
  xx: then.xx * first.xx + then.xy * first.yx + then.xz * first.zx,
  xy: then.xx * first.xy + then.xy * first.yy + then.xz * first.zy,
  xz: then.xx * first.xz + then.xy * first.yz + then.xz * first.zz,
  x0: then.xx * first.x0 + then.xy * first.y0 + then.xz * first.z0 + then.x0,
  yx: then.yx * first.xx + then.yy * first.yx + then.yz * first.zx,
  yy: then.yx * first.xy + then.yy * first.yy + then.yz * first.zy,
  yz: then.yx * first.xz + then.yy * first.yz + then.yz * first.zz,
  y0: then.yx * first.x0 + then.yy * first.y0 + then.yz * first.z0 + then.y0,
  zx: then.zx * first.xx + then.zy * first.yx + then.zz * first.zx,
  zy: then.zx * first.xy + then.zy * first.yy + then.zz * first.zy,
  zz: then.zx * first.xz + then.zy * first.yz + then.zz * first.zz,
  z0: then.zx * first.x0 + then.zy * first.y0 + then.zz * first.z0 + then.z0,
});

/** Sine of whole degrees, exact at right angles. */
function sine(degrees: number): number {
  if (degrees % 180 === 0) return 0;
  if (degrees % 90 === 0) return Math.abs(degrees) % 360 === 90 ? Math.sign(degrees) : -Math.sign(degrees);
  return Math.sin((degrees * Math.PI) / 180);
}

/**
 * The turn about the line from `p` to `q` in the plane z = 0 that lifts what lies to the right of it, as
 * seen walking from `p` to `q` with y down, toward the viewer by `degrees`. Rodrigues' formula.
 */
export function hinge(
  p: { readonly x: number; readonly y: number },
  q: { readonly x: number; readonly y: number },
  degrees: number,
): Motion {
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  const u = (q.x - p.x) / length;
  const v = (q.y - p.y) / length;
  const sin = sine(degrees);
  const cos = sine(degrees + 90);
  const rest = 1 - cos;
  const xx = cos + u * u * rest;
  const xy = u * v * rest;
  const yy = cos + v * v * rest;
  return {
    xx,
    xy,
    xz: v * sin,
    x0: p.x - xx * p.x - xy * p.y,
    yx: xy,
    yy,
    yz: -u * sin,
    y0: p.y - xy * p.x - yy * p.y,
    zx: -v * sin,
    zy: u * sin,
    zz: cos,
    z0: v * sin * p.x - u * sin * p.y,
  };
}

/** The motion that leaves everything where it is. */
export const still: Motion = hinge({ x: 0, y: 0 }, { x: 1, y: 0 }, 0);
