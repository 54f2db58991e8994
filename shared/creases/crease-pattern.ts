import type { Point } from '../geometry/plane.ts';

/**
 * FOLD's letters: border, mountain, valley, flat. Valley folds toward the viewer with the inside face up. Flat is no
 * crease: there two convex pieces of one panel, or panels that are never folded apart, run on into each other.
 */
export type Letter = 'B' | 'M' | 'V' | 'F';

/** One straight piece of crease or border between two vertices. */
export interface Edge {
  /** Indices into the vertices. */
  readonly ends: readonly [number, number];
  readonly letter: Letter;
  /** Degrees: positive for a valley, negative for a mountain, 0 on border and flat (FOLD 1.2, edges_foldAngle). */
  readonly foldAngle: number;
  /** Degrees in the finished form, where they are others: a crease that is folded flat to be glued, and opened again. */
  readonly closedAngle?: number;
  /** Index of the fold that made it; absent on border and flat. */
  readonly step?: number;
}

/** One face of the sheet between creases. */
export interface Face {
  /** Indices of its corners, clockwise as seen (y runs down). */
  readonly vertices: readonly number[];
  /** Name of the panel that it is part of. */
  readonly panel: string;
}

/** The blank as a planar graph, inside face up, in nanometres from its top left corner. */
export interface CreasePattern {
  readonly vertices: readonly Point[];
  readonly edges: readonly Edge[];
  readonly faces: readonly Face[];
  /** Names of the folds, in order; an edge's `step` counts in here. */
  readonly steps: readonly string[];
}

/** Whether an edge is folded in the end. */
export const isCrease = ({ letter }: Pick<Edge, 'letter'>): boolean => letter === 'V' || letter === 'M';

/** Degrees of an edge in the finished form. */
export const closedAngleOf = ({ closedAngle, foldAngle }: Edge): number => closedAngle ?? foldAngle;
