import type { Isometry } from '../geometry/plane.ts';
import type { FlatFace } from './flat-faces.ts';
import type { Spot } from './spots.ts';

/** Which way a print points, seen by somebody who holds the folder upright. */
export type Direction = 'upright' | 'inverted' | 'turned left' | 'turned right';

/** A piece of the folder that can be seen from one side. */
export interface Region {
  /** Name of the panel. */
  readonly part: string;
  /** Which printed side of the sheet shows. */
  readonly face: 'outside' | 'inside';
  /** How the print lies there when the sheet's two prints run the same way, and when they run head to foot. */
  readonly direction: { readonly sameWay: Direction; readonly headToFoot: Direction };
  /** Square millimetres that can be seen. */
  readonly area: number;
}

/** From where the flat sleeve is looked at: `inside` is where the viewer stood when folding began. */
export type Side = 'inside' | 'outside';

/**
 * What can be seen from one side, largest first.
 * @param up the sheet's up in pattern coordinates: where the outside print's up points
 * @param hidden panels that are out of the way, as when a pocket's flaps are lifted
 */
export function regionsFrom(
  side: Side,
  spots: readonly Spot[],
  up: { readonly x: number; readonly y: number },
  hidden: (panel: string) => boolean = () => false,
): readonly Region[] {
  const regions = new Map<string, Region>();
  for (const { stack, area } of spots) {
    const left = stack.filter(({ panel }) => !hidden(panel));
    const seen = side === 'inside' ? left.at(-1) : left[0];
    if (!seen) continue;
    const region = regionOf(seen, side, up, area);
    const key = [region.part, region.face, region.direction.sameWay].join();
    const known = regions.get(key);
    regions.set(key, known ? { ...known, area: known.area + area } : region);
  }
  return [...regions.values()].toSorted((one, other) => other.area - one.area);
}

function regionOf(seen: FlatFace, side: Side, up: { x: number; y: number }, area: number): Region {
  const face = (side === 'inside') === seen.turned ? 'outside' : 'inside';
  const sameWay = directionOf(seen.lies, up, side);
  const headToFoot = face === 'outside' ? sameWay : directionOf(seen.lies, { x: -up.x, y: -up.y }, side);
  return { part: seen.panel, face, direction: { sameWay, headToFoot }, area };
}

/** Seen from outside the form is mirrored left to right, as when a page is turned. */
function directionOf(lies: Isometry, up: { x: number; y: number }, side: Side): Direction {
  const y = lies.b * up.x + lies.d * up.y;
  const x = (lies.a * up.x + lies.c * up.y) * (side === 'inside' ? 1 : -1);
  if (Math.abs(y) >= Math.abs(x)) return y < 0 ? 'upright' : 'inverted';
  return x < 0 ? 'turned left' : 'turned right';
}
