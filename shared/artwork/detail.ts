import type { Contour } from '../geometry/contour.ts';
import { CHORD_ERROR, chordsFor, flatten } from '../geometry/flatten.ts';
import type { Point } from '../geometry/plane.ts';
import { walk } from '../geometry/walk.ts';

/*
 * Bounds on the work that outlines from outside can cause. Uniting them costs about n log n for n chords plus what
 * the crossings cost, of which n chords may have n². A cutter follows a chord of 0.1 mm at best, so that 60,000 of
 * them are more than 6 m of finest detail.
 */
const MOST_CHORDS = 60_000;
/** Closed lines. Which lies in which is looked for pair by pair; letters have up to four. */
export const MOST_CONTOURS = 2_000;
const MOST_CROSSINGS = 5_000;
/** Pairs of chords that share a stretch of x; clipping sweeps over them as the count here does. */
const MOST_PAIRS = 4_000_000;

interface Chord {
  readonly from: Point;
  readonly to: Point;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * What makes outlines more than can be worked on in good time, as a clause for a sentence; nothing when they are fine.
 * @param contours in nanometres, at the size at which they will be cut
 */
export function tooMuchDetail(contours: readonly Contour[]): string | undefined {
  if (contours.length > MOST_CONTOURS) return `has more than ${MOST_CONTOURS} closed lines`;
  let chords = 0;
  for (const contour of contours) {
    walk(contour, (from, stretch) => {
      chords += chordsFor(from, stretch, CHORD_ERROR);
    });
    if (!(chords <= MOST_CHORDS))
      return `has more than ${MOST_CHORDS} straight parts once its curves are followed within 0.01 mm`;
  }
  return crossesTooOften(contours.flatMap(chordsOf));
}

function chordsOf(contour: Contour): Chord[] {
  const points = flatten(contour);
  return points.map((from, index) => {
    const to = points[index + 1] ?? points[0] ?? from;
    return {
      from,
      to,
      left: Math.min(from.x, to.x),
      right: Math.max(from.x, to.x),
      top: Math.min(from.y, to.y),
      bottom: Math.max(from.y, to.y),
    };
  });
}

/** Sweeps from left to right and stops as soon as a bound is passed. */
function crossesTooOften(chords: readonly Chord[]): string | undefined {
  const sorted = [...chords].sort((one, other) => one.left - other.left);
  let pairs = 0;
  let crossings = 0;
  for (const [index, chord] of sorted.entries()) {
    for (let i = index + 1; i < sorted.length; i++) {
      const other = sorted[i];
      if (!other || other.left > chord.right) break;
      if (++pairs > MOST_PAIRS) return 'has too many long lines beside one another';
      if (chord.top > other.bottom || other.top > chord.bottom || !cross(chord, other)) continue;
      if (++crossings > MOST_CROSSINGS) return `has lines that cross more than ${MOST_CROSSINGS} times`;
    }
  }
  return undefined;
}

/** Whether two chords cross in their insides; those that follow each other do not. */
const cross = (one: Chord, other: Chord): boolean =>
  side(one, other.from) * side(one, other.to) < 0 && side(other, one.from) * side(other, one.to) < 0;

const side = ({ from, to }: Chord, p: Point): number =>
  (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x);
