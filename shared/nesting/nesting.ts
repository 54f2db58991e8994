import type { Nm } from '../lengths/nanometres.ts';
import type { Rectangle } from './free-space.ts';
import type { Face } from './nest-spec.ts';

/** Turned clockwise as seen, degrees. */
export type Turn = 0 | 90 | 180 | 270;

/** A piece on a sheet: its box as it lies, nm from the sheet's top left corner. */
export interface Placed extends Rectangle {
  /** Number of the piece in the spec. */
  readonly piece: number;
  readonly turn: Turn;
}

/** A line along which two pieces lie edge to edge, so that one cut serves both. */
export interface SharedEdge {
  readonly x1: Nm;
  readonly y1: Nm;
  readonly x2: Nm;
  readonly y2: Nm;
}

/** One way of cutting a sheet, used for one sheet or several. */
export interface SheetLayout {
  /** Number of the sheet in the spec. */
  readonly sheet: number;
  /** The face that must lie up, where a piece asks for one. */
  readonly face?: Face;
  readonly times: number;
  readonly placed: readonly Placed[];
  readonly sharedEdges: readonly SharedEdge[];
  /** Rectangles that stay whole, the largest first; they do not overlap. */
  readonly offcuts: readonly Rectangle[];
  /** Area of the pieces beside that of the sheet. */
  readonly utilisation: number;
}

export interface Offcut {
  readonly paper: string;
  readonly width: Nm;
  readonly height: Nm;
  readonly count: number;
}

export interface Unplaced {
  readonly piece: number;
  readonly count: number;
  readonly reason: 'too large for every sheet' | 'no sheet left';
}

/** Why the search ended: the number of sheets is proved to be the least, its evaluations were spent, or it was told to. */
export type StopReason = 'proved' | 'evaluations' | 'time limit' | 'cancelled';

export interface Nesting {
  readonly layouts: readonly SheetLayout[];
  readonly unplaced: readonly Unplaced[];
  readonly offcuts: readonly Offcut[];
  readonly sheets: number;
  /** No plan that places every piece which fits on some sheet uses fewer sheets. */
  readonly bound: number;
  /** `sheets` less `bound`. */
  readonly gap: number;
  /** Whether the number of sheets is proved to be the least. */
  readonly proved: boolean;
  readonly utilisation: number;
  readonly seed: number;
  readonly evaluations: number;
  readonly stopped: StopReason;
}

/** How far a search has come. */
export interface NestProgress {
  readonly paper: string;
  readonly sheets: number;
  readonly bound: number;
  readonly evaluations: number;
}
