import { type Contour, isCurve, type Shape, type Stretch } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/plane.ts';
import { walk } from '../../geometry/walk.ts';
import type { Nm } from '../../lengths/nanometres.ts';
import { type Checked, type Finding, shownPlaces } from './finding.ts';

/** Corners that turn by less than this, in radians, run on as good as smoothly. */
const smooth = Math.PI / 12;

/** Corners that a tool with a least radius tears. @param radius of the cutter, in nanometres */
export const sharpCorners = ({ list, say }: Checked, radius: Nm): readonly Finding[] =>
  list.flatMap(({ index, title, onBlank }): Finding[] => {
    const corners = cornersOf(onBlank);
    if (corners.length === 0) return [];
    return [
      {
        code: 'corner-sharp',
        does: 'tell',
        knockouts: [index],
        message: `${title} has ${corners.length === 1 ? 'a corner' : `${corners.length} corners`} sharper than the ${say(radius)} that the cutter can turn in`,
        remedy: 'set cutter.roundCorners, or expect torn corners',
        brief: `${corners.length} sharp`,
        limit: radius,
        at: shownPlaces(corners),
      },
    ];
  });

/** Every point where a figure's outline turns sharply. */
export const cornersOf = (shape: Shape): readonly Point[] => shape.flatMap(cornersIn);

function cornersIn(contour: Contour): Point[] {
  const corners: Point[] = [];
  let into = lastDirection(contour);
  walk(contour, (from, stretch) => {
    const out = startDirection(from, stretch);
    const turn = Math.atan2(into.x * out.y - into.y * out.x, into.x * out.x + into.y * out.y);
    if (Math.abs(turn) > smooth) corners.push(from);
    into = endDirection(from, stretch);
  });
  return corners;
}

function lastDirection(contour: Contour): Point {
  let direction = { x: 1, y: 0 };
  walk(contour, (from, stretch) => {
    direction = endDirection(from, stretch);
  });
  return direction;
}

const way = (from: Point, to: Point): Point => ({ x: to.x - from.x, y: to.y - from.y });
const isApart = (p: Point, q: Point): boolean => Math.hypot(p.x - q.x, p.y - q.y) > 1;

const startDirection = (from: Point, stretch: Stretch): Point =>
  way(
    from,
    [...(isCurve(stretch) ? stretch.control : []), stretch.to].find((p) => isApart(p, from)) ?? stretch.to,
  );

const endDirection = (from: Point, stretch: Stretch): Point =>
  way(
    [...(isCurve(stretch) ? stretch.control.toReversed() : []), from].find((p) => isApart(p, stretch.to)) ??
      from,
    stretch.to,
  );
