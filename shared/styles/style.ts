import type { FoldProgram } from '../creases/fold-program.ts';
import type { PocketPlace } from '../folding/pockets.ts';
import type { Nm } from '../lengths/nanometres.ts';
import type { Bound, Unknown } from '../solver/bounds.ts';

/** A rectangle that the blank must stay within, already turned to the blank's own width and height. */
export interface Room {
  readonly name: 'sheet' | 'cutter';
  readonly width: Nm;
  readonly height: Nm;
  /** JSON Pointer of the spec member that sets it. */
  readonly path: string;
}

/** What the contents ask of the folder, already turned as they will stand. */
export interface Demand {
  readonly itemName: 'card' | 'envelope';
  readonly width: Nm;
  readonly height: Nm;
  /** Thickness of the sets in one pocket. */
  readonly inPocket: Nm;
  /** Thickness of all sets together. */
  readonly stack: Nm;
  readonly easeAcross: Nm;
  readonly easeAlong: Nm;
}

/** Everything a style needs to know to name its unknowns and bounds. */
export interface Situation {
  readonly rooms: readonly Room[];
  readonly demand: Demand | undefined;
  readonly caliper: Nm;
  readonly glueWidth: Nm;
  readonly spineEase: Nm;
  /** What each fold takes from the panel that ends there; 0 where the grid is too coarse to tell. */
  readonly foldLoss: Nm;
  readonly prefer: 'whole-sheet' | 'least-paper';
  /** Step in nanometres on which scores fall; 0 for none. */
  readonly grid: Nm;
  /** The spec asks for the grid, as makers with a scoring board do; otherwise it is only a habit. */
  readonly gridGiven: boolean;
}

export interface Model {
  /** In the order in which they are settled. */
  readonly unknowns: readonly Unknown[];
  readonly bounds: readonly Bound[];
}

export type Dimensions = Readonly<Record<string, Nm>>;

/** One dimension as people read it. `name` is its dotted path under `dimensions` in a spec. */
export interface DimensionName {
  readonly name: string;
  readonly title: string;
}

/**
 * A way of folding. A style says what it looks for, what limits it and how it is folded; the solver, the
 * crease pattern and the drawing follow from that alone.
 */
export interface Style<Spec> {
  readonly name: string;
  readonly title: string;
  readonly summary: string;
  readonly dimensionNames: readonly DimensionName[];
  /** Pockets that share the contents. */
  readonly pockets: readonly PocketPlace[];
  /** Pairs of panels that overlap at a seam: there the edge of each is drawn as one. */
  readonly seams: readonly (readonly [string, string])[];
  /** Layers of the sheet between the two outer faces of the closed folder, where the stack lies. */
  readonly layers: number;
  /** The spine that the spec fixes, if it does: it decides how many sets fit. */
  givenSpine(spec: Spec): Nm | undefined;
  /** Whether the dimensions that the spec gives say how large the folder is to be, without contents or a sheet. */
  saysHowLarge(spec: Spec): boolean;
  /** Distance between the spine scores of a solved folder. */
  spine(dimensions: Dimensions): Nm;
  model(spec: Spec, situation: Situation): Model;
  /** Every dimension by name, from the solved unknowns. */
  dimensions(values: Dimensions): Dimensions;
  blank(dimensions: Dimensions): { readonly width: Nm; readonly height: Nm };
  /** Outer size of the folder when closed, without its thickness. */
  closed(dimensions: Dimensions): { readonly width: Nm; readonly height: Nm };
  /** Outer size of the folded form while it still lies flat. */
  flat(dimensions: Dimensions): { readonly width: Nm; readonly height: Nm };
  /** Inside of one pocket, as far as an item may reach. */
  pocket(dimensions: Dimensions): { readonly width: Nm; readonly height: Nm };
  /** How far the proportions are from the style's own; 0 is ideal, 1 is poor. */
  oddness(dimensions: Dimensions): number;
  program(spec: Spec, dimensions: Dimensions): FoldProgram;
}
