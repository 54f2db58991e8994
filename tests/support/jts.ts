import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import type { Shape } from '../../shared/geometry/contour.ts';
import type { Point } from '../../shared/geometry/plane.ts';
import { sampled } from './contours.ts';

/*
 * A second opinion on plane figures: jsts, a translation of the JTS Topology Suite by other authors, which shares no
 * code with Clipper2. Curves come to it as points by bezier-js. Numbers are in millimetres and mm².
 */

/** A figure as jsts has it. */
export interface JtsFigure {
  getArea(): number;
  getNumGeometries(): number;
}

const factory = new GeometryFactory();

function ring(points: readonly Point[]) {
  const coordinates = points.map(({ x, y }) => new Coordinate(x / 1e6, y / 1e6));
  return factory.createLinearRing([...coordinates, coordinates[0]]);
}

/** The polygon inside a closed line of points in nanometres. */
export const jtsPolygon = (points: readonly Point[]): JtsFigure => factory.createPolygon(ring(points));

/** A figure whose first contour is the outer one of all others. */
export const jtsFigure = ([outer, ...counters]: Shape, per = 200): JtsFigure =>
  factory.createPolygon(
    outer && ring(sampled(outer, per)),
    counters.map((counter) => ring(sampled(counter, per))),
  );

export const jtsUnion = (a: JtsFigure, b: JtsFigure): JtsFigure => OverlayOp.union(a, b);
export const jtsIntersection = (a: JtsFigure, b: JtsFigure): JtsFigure => OverlayOp.intersection(a, b);
export const jtsDifference = (a: JtsFigure, b: JtsFigure): JtsFigure => OverlayOp.difference(a, b);

/** The least distance between two figures, in millimetres. */
export const jtsDistance = (a: JtsFigure, b: JtsFigure): number => DistanceOp.distance(a, b);

/** A figure grown by millimetres; arcs of 64 sides a quarter, so that their area is within 1e-4 of the true one. */
export function jtsGrown(figure: JtsFigure, distance: number, join: 'round' | 'mitred'): JtsFigure {
  const parameters = new BufferParameters(64);
  if (join === 'mitred') {
    parameters.setJoinStyle(BufferParameters.JOIN_MITRE);
    parameters.setMitreLimit(100);
  }
  return BufferOp.bufferOp(figure, distance, parameters);
}

/** Whether no ring crosses or touches itself or another, by the rules of the Simple Features standard. */
export const jtsIsValid = (figure: JtsFigure): boolean => new IsValidOp(figure).isValid();
