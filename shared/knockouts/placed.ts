import type { Shape } from '../geometry/contour.ts';
import type { Fault } from '../lettering/fault.ts';
import type { Finding } from './checks/finding.ts';
import type { LayerCut } from './cut-through.ts';
import type { Design } from './designs/design.ts';
import type { Paper } from './paper.ts';

/** A knockout with what it takes from each layer. */
export interface PlacedKnockout extends Design {
  /** Its place in the spec's list. */
  readonly index: number;
  /** What people call it within a sentence. */
  readonly title: string;
  /** What is cut, where it lies on the flat form. */
  readonly onForm: Shape;
  readonly cuts: readonly LayerCut[];
  /** All of its openings on the open blank, grown together across folds. */
  readonly onBlank: Shape;
}

/** Every knockout of a spec, and the paper that is left. */
export interface PlacedKnockouts {
  readonly list: readonly PlacedKnockout[];
  /** All that is gone of the blank: the openings, united, and what comes off at its border with them. */
  readonly openings: Shape;
  readonly paper: Paper;
  /** What is left of each face that is cut, on the blank, by face index. */
  readonly facesLeft: ReadonlyMap<number, Shape>;
}

/** Placed knockouts with everything that is to be said of them. */
export interface Knockouts extends PlacedKnockouts {
  readonly findings: readonly Finding[];
}

export type Placing =
  | { readonly ok: true; readonly knockouts: Knockouts }
  /** Faults carry paths from the whole spec. */
  | { readonly ok: false; readonly faults: readonly Fault[] };
