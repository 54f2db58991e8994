import type { GlueStep, GlueStrip } from '../../creases/fold-program.ts';
import { glueKeepOut } from '../../creases/glue-keep-out.ts';
import { mm, type Nm } from '../../lengths/nanometres.ts';
import { at } from '../common/dimension.ts';
import type { Dimensions } from '../style.ts';
import { b, g, s } from './dimensions.ts';
import { type Front, frontOf, middlePart, shape } from './shape.ts';

const { edge, mouth } = glueKeepOut;
/** How far along the level glue stays from the slanting edges of the closing flap; common practice. */
const askew = mm(3);

/** How much of a pointed side flap's depth a strip takes at most; common practice. */
const widestShare = 0.2;

type Rectangle = Pick<GlueStrip, 'left' | 'right' | 'top' | 'bottom'>;

/** The side flaps under the back. */
export function sideGlue(d: Dimensions, pointed: boolean, glueWidth: Nm): GlueStep {
  const front = frontOf(d);
  // a seam between two slanting edges has no room for wide tape
  const width = pointed ? Math.min(glueWidth, Math.round(at(d, s) * widestShare)) : glueWidth;
  const strip = pointed ? diagonalStrip(d, front, width) : squareStrip(d, front, width);
  const strips = (['left', 'right'] as const).map(
    (side): GlueStrip => ({
      panel: `${side} side`,
      face: 'outside',
      to: 'back',
      ...(side === 'left' ? strip : mirrored(front, strip)),
    }),
  );
  return {
    kind: 'glue',
    name: 'glue at the seams',
    holds: 'side flaps',
    strips,
    width,
    inset: edge,
    lines: 1,
    keepFree: 'Keep it under the back, or the contents stick.',
  };
}

const mirrored = ({ left, right }: Front, strip: Rectangle): Rectangle => ({
  ...strip,
  left: left + right - strip.right,
  right: left + right - strip.left,
});

function squareStrip(d: Dimensions, front: Front, glueWidth: Nm): Rectangle {
  const end = shape.sideInset + shape.sideTaper + edge;
  return {
    left: edge,
    right: edge + glueWidth,
    top: Math.max(front.top + end, front.bottom - at(d, b) + mouth),
    bottom: front.bottom - end,
  };
}

/**
 * Where a pointed side flap lies under the back, far from its fold: over the side flap's own lower edge, under the
 * back's slanting one.
 */
function diagonalStrip(d: Dimensions, front: Front, glueWidth: Nm): Rectangle {
  const depth = at(d, s);
  const outer = edge;
  const [, sidePoint] = middlePart(front.top, front.bottom);
  const [backPoint] = middlePart(front.left, front.right);
  // heights of both edges over the bottom fold, as far from the side's fold as the strip begins and ends
  const [near, far] = [depth - outer - glueWidth, depth - outer];
  const sideSlope = (front.bottom - sidePoint - shape.sideInset) / depth;
  const backSlope = at(d, b) / (backPoint - front.left);
  const sideEdge = shape.sideInset + far * sideSlope + clearOf(sideSlope);
  // the side flap's upper edge slants like its lower one
  const upperEdge = front.bottom - front.top - sideEdge;
  const backEdge = Math.min(at(d, b) - mouth, near * backSlope - clearOf(backSlope), upperEdge);
  return {
    left: outer,
    right: outer + glueWidth,
    top: Math.ceil(front.bottom - backEdge),
    bottom: Math.floor(front.bottom - sideEdge),
  };
}

/** How far along the upright glue stays from an edge that rises by so much for its width. */
const clearOf = (slope: number): Nm => edge * Math.hypot(1, slope);

/** The gum of the closing flap, on the back. */
export function flapGum(d: Dimensions, pointed: boolean): GlueStep {
  const front = frontOf(d);
  const gum = at(d, g);
  const [from, to] = pointed
    ? middlePart(front.left, front.right)
    : [front.left + shape.flapTaper, front.right - shape.flapTaper];
  return {
    kind: 'glue',
    name: 'gum of the closing flap',
    holds: 'closing flap',
    strips: [
      {
        panel: 'closing flap',
        face: 'inside',
        to: 'back',
        left: from + askew,
        right: to - askew,
        top: edge,
        bottom: edge + gum,
      },
    ],
    width: gum,
    inset: edge,
    lines: 1,
  };
}
