import type { FoldProgram } from '../creases/fold-program.ts';
import type { PocketPlace } from '../folding/pocket-place.ts';
import type { Side } from '../folding/regions.ts';
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

/** What people say of the finished piece, in its pictures and warnings. */
export interface Words {
  /** The finished thing: `folder`. */
  readonly piece: string;
  /** What it is when it lies flat: `flat sleeve`. */
  readonly flat: string;
  /** What one calls it when it is ready: `closed`. */
  readonly ready: string;
  /** Where it is best seen, after “seen from inside”: `where the pockets are`. */
  readonly inside?: string;
  /** How the picture shows it that is neither flat nor closed: `standing, half open`, and a sentence without its stop. */
  readonly ajar: { readonly heading: string; readonly description: string };
  /** What is done when the contents are in: `Then close the folder.` */
  readonly filled?: string;
  /** Which dimensions say how large it is to be: `the width and height of a panel`. */
  readonly sizedBy: string;
  /** Where most layers lie on each other, and what to do about it besides thinner paper. */
  readonly thickest?: { readonly where: string; readonly remedy?: string };
}

/** One of the two sides from which the finished piece is looked at. */
export interface Cover {
  /** `front cover` */
  readonly name: string;
  /** The side of the style's face panel that is looked at. */
  readonly side: Side;
  /** What stands at an edge and is seen only as a line: a spine. */
  readonly beside?: { readonly at: 'left' | 'right'; readonly text: string };
}

/** From where the piece is seen that is neither flat nor closed, as turns in degrees from square to one of its panels. */
export interface Pose {
  /** That panel; default the style's face. */
  readonly root?: string;
  /** Turned in its own plane, clockwise as seen. */
  readonly spun?: number;
  /** Turned to the right about its upright. */
  readonly turned: number;
  /** Tipped toward the viewer, who looks down on it; below 0 it is laid back. */
  readonly tipped: number;
}

/**
 * A way of folding. A style says what it looks for, what limits it and how it is folded; the solver, the
 * crease pattern and the drawing follow from that alone.
 */
export interface Style<Spec> {
  readonly name: string;
  readonly title: string;
  readonly summary: string;
  readonly words: Words;
  readonly dimensionNames: readonly DimensionName[];
  /** Pockets that share the contents. */
  readonly pockets: readonly PocketPlace[];
  /** The same pockets by other words, where it depends on dimensions or spec how they hold what is in them. */
  pocketsIn?(dimensions: Dimensions, spec: Spec): readonly PocketPlace[];
  /** Pairs of panels that overlap at a seam: there the edge of each is drawn as one. */
  readonly seams: readonly (readonly [string, string])[];
  /** The panel square to which the finished piece is seen and measured. */
  readonly face: string;
  /** The first is the front. */
  readonly covers: readonly Cover[];
  readonly pose?: Pose;
  /** Layers of the sheet between the two outer faces of the finished piece, where the stack lies. */
  readonly layers: number;
  /** Name of the dimension that holds the stack when the piece is set up, if one does: it decides how many sets fit. */
  readonly depth?: string;
  /** JSON Pointer of the spec member that decides whether corners are cut away, if one does. */
  readonly cornersAt?: string;
  /** Play that is left where the spec does not say, if it is not what folders have. */
  readonly usualEase?: Partial<Ease>;
  /** Whether the spec says how large the piece is to be, without contents or a sheet. */
  saysHowLarge(spec: Spec): boolean;
  model(spec: Spec, situation: Situation): Model;
  /** Every dimension by name, from the solved unknowns. */
  dimensions(values: Dimensions): Dimensions;
  blank(dimensions: Dimensions, spec: Spec): { readonly width: Nm; readonly height: Nm };
  /** The finished piece. */
  closed(dimensions: Dimensions, spec: Spec): ClosedSize;
  /** Outer size of the folded form while it still lies flat. */
  flat(dimensions: Dimensions, spec: Spec): { readonly width: Nm; readonly height: Nm };
  /** Inside of one pocket, as far as an item may reach, if there is one. */
  pocket?(dimensions: Dimensions): { readonly width: Nm; readonly height: Nm };
  /** How far the proportions are from the style's own; 0 is ideal, 1 is poor. */
  oddness(dimensions: Dimensions): number;
  /** @param caliper thickness of the sheet in nanometres */
  program(spec: Spec, dimensions: Dimensions, caliper: Nm): FoldProgram;
}

/** Outer size of the finished piece, seen square to its face. */
export interface ClosedSize {
  readonly width: Nm;
  readonly height: Nm;
  /** Between the outermost sheets of a piece that is set up; left out where it lies flat for good. */
  readonly depth?: Nm;
  /** Where the piece keeps its thickness whatever is in it; else it follows from contents and layers. */
  readonly thickness?: Nm;
  /** Layers of the sheet where the spec decides on them. */
  readonly layers?: number;
}

/** Play of the contents, in nanometres. */
export interface Ease {
  readonly along: Nm;
  readonly across: Nm;
  readonly spine: Nm;
}
