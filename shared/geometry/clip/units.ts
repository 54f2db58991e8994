import type { Path64 } from 'clipper2-ts';

/**
 * Clipping works on whole numbers of this many nanometres: 0.1 µm. Its cross products are exact while coordinates
 * differ by less than 9·10⁷ units, which is 9 m; larger ones fall back to big integers.
 */
export const UNIT = 100;

/** How far, in nanometres, the chords that stand for a curve while it is clipped or offset may lie from it: 2.5 µm. */
export const CLIP_ERROR = 2500;

/** Points nearer than this many units in x and y cannot be told apart: crossings are cut to whole units. */
export const NEAR = 3;

/** Parts that are on average thinner than this many units, 1 µm, come from rounding and are left out. */
const SLIVER = 10;

/** Whether a path holds an area that can be drawn. The mean width of a thin part is 2·area / perimeter. */
export function isPlain(path: Path64): boolean {
  let twiceArea = 0;
  let around = 0;
  let before = path.at(-1);
  for (const p of path) {
    if (before) {
      twiceArea += before.x * p.y - before.y * p.x;
      around += Math.hypot(p.x - before.x, p.y - before.y);
    }
    before = p;
  }
  return Math.abs(twiceArea) > SLIVER * around;
}
