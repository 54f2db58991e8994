import { closedAngleOf } from '../../creases/crease-pattern.ts';
import type { Folded } from '../../folding/proof-of.ts';
import { arcCurves } from '../../geometry/arcs.ts';
import type { Contour, Shape } from '../../geometry/contour.ts';
import { moveShape, shift, turn } from '../../geometry/move-shape.ts';
import { compose, move, type Point } from '../../geometry/plane.ts';
import { mm } from '../../lengths/nanometres.ts';
import { inMm } from '../../lengths/show-length.ts';
import { extentOf } from '../anchored.ts';
import type { KnockoutOf } from '../knockout-spec.ts';
import { type Place, toForm } from '../places.ts';
import { type DesignContext, type Designed, onPlace, refused } from './design.ts';

/** Clockwise, so that each is the one before it turned by a quarter. */
const corners = ['top left', 'top right', 'bottom right', 'bottom left'] as const;
type Corner = (typeof corners)[number];

/** The corners of a place rounded through everything that lies there. */
export const cornersDesign = (spec: KnockoutOf<'rounded-corners'>, context: DesignContext): Designed =>
  onPlace(spec.place, ['place'], context, (place) => {
    const { width, height } = extentOf(place);
    const most = Math.min(width, height) / 2;
    if (spec.radius > most)
      return refused({
        path: ['radius'],
        message: 'the corners are rounder than the place is large',
        remedy: `give a radius of at most ${Math.floor(inMm(most) * 100) / 100} mm`,
      });
    const chosen = spec.corners ?? corners.filter((corner) => !isAtSpine(corner, place, context.folded));
    const figure = [...new Set(chosen)].flatMap((corner) => cornerCut(corner, place, spec.radius));
    if (figure.length > 0) return { ok: true, design: { place, figure, meant: 'every-layer', atEdge: true } };
    return refused({
      path: ['corners'],
      message: `every corner of the ${place.name} is at a spine`,
      remedy: 'name the corners, or another place',
    });
  });

const pointOf = (corner: Corner, place: Place): Point => {
  const { width, height } = extentOf(place);
  return { x: corner.endsWith('left') ? 0 : width, y: corner.startsWith('top') ? 0 : height };
};

/** Points that are no further apart than this, in nanometres, are one. */
const ONE = 2000;

/** Whether a crease that ends up at a right angle ends at a corner of a place. */
function isAtSpine(corner: Corner, place: Place, { pattern, proof }: Folded): boolean {
  const { x, y } = move(toForm(place), pointOf(corner, place));
  const spines = pattern.edges.filter((edge) => Math.abs(closedAngleOf(edge)) === 90);
  return spines
    .flatMap(({ ends }) => ends)
    .some((end) => {
      const face = pattern.faces.findIndex(({ vertices }) => vertices.includes(end));
      const [point, lies] = [pattern.vertices[end], proof.faces[face]?.lies];
      if (!point || !lies) return false;
      const there = move(lies, point);
      return Math.abs(there.x - x) < ONE && Math.abs(there.y - y) < ONE;
    });
}

/** A corner's cut reaches this far beyond the corner, so that nothing of it stays. */
const beyond = mm(1);

/**
 * The arc begins and ends this far inside of the sides that it touches, in nanometres: nearer to them it would part a
 * hair of paper that no tool cuts.
 */
const hair = 10_000;

/** What rounding takes off a corner: between its two sides and the arc that touches both. */
function cornerCut(corner: Corner, place: Place, radius: number): Shape {
  const centre = { x: radius, y: radius };
  const degrees = (Math.acos(1 - hair / radius) * 180) / Math.PI;
  const reach = radius - Math.sqrt(hair * (2 * radius - hair));
  const arc = arcCurves({
    centre,
    radiusX: radius,
    radiusY: radius,
    from: -90 - degrees,
    to: -180 + degrees,
  });
  const atTopLeft: Contour = {
    start: { x: -beyond, y: -beyond },
    stretches: [
      { to: { x: reach, y: -beyond } },
      { to: { x: reach, y: hair } },
      ...arc,
      { to: { x: -beyond, y: reach } },
      { to: { x: -beyond, y: -beyond } },
    ],
  };
  const { x, y } = pointOf(corner, place);
  return moveShape([atTopLeft], compose(shift(x, y), turn(90 * corners.indexOf(corner))));
}
