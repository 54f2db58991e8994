/** A crease between two faces, as the first one's corners run. */
export interface Hinge {
  readonly faces: readonly [number, number];
  readonly from: number;
  readonly to: number;
  /** Degrees before the first step and after each: one more than there are steps. */
  readonly angles: readonly number[];
  /** Degrees that are added in the middle of a step: of a fold that is bent and laid flat again. */
  readonly between: readonly number[];
}

/** The folding in space. */
export interface Solid {
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
  readonly caliper: number;
  /** Corners in millimetres on the open sheet, inside face up, y down. */
  readonly vertices: readonly (readonly [x: number, y: number])[];
  readonly faces: readonly (readonly number[])[];
  /** For each moment, how high each face lies in the stack: layers out of its own inside face. */
  readonly lifts: readonly (readonly number[])[];
  readonly hinges: readonly Hinge[];
  /** The face that stays. */
  readonly root: number;
  readonly steps: number;
}
