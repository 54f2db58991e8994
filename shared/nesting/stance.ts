import type { Path64, Paths64 } from 'clipper2-ts';
import { type Control, type Steps, spend } from './control.ts';
import type { NestPiece } from './nest-spec.ts';
import type { Turn } from './nesting.ts';
import { noFit } from './no-fit.ts';
import { keepOut, rectangleOutline, STEP, turnedOutline } from './outline.ts';

/** A piece in one of its turns, in steps. */
export interface Stance {
  /** Number of its box in the job. */
  readonly box: number;
  readonly turn: Turn;
  readonly width: number;
  readonly height: number;
  readonly keepOut: Path64;
}

const turnsOf: Readonly<Record<NestPiece['turns'], readonly Turn[]>> = {
  none: [0],
  half: [0, 180],
  quarter: [0, 90, 180, 270],
};

/** @param keep how far its outline is grown, as {@link keepOut} reads it */
export function stancesOf(
  piece: NestPiece,
  box: number,
  keep: Parameters<typeof keepOut>[1],
): readonly Stance[] {
  const { width, height, turns } = piece;
  const outline = piece.outline ?? rectangleOutline(width, height);
  // a rectangle looks alike after half a turn
  const distinct = turnsOf[turns].filter((turn) => piece.outline !== undefined || turn < 180);
  return distinct.map((turn) => {
    const [across, along] = turn % 180 === 0 ? [width, height] : [height, width];
    return {
      box,
      turn,
      width: Math.ceil(across / STEP),
      height: Math.ceil(along / STEP),
      keepOut: keepOut(turnedOutline(outline, width, height, turn), keep),
    };
  });
}

/**
 * The no-fit polygon of a stance beside another one that lies at the origin. Each is worked out once, in a step of its own,
 * since it may take long.
 * @returns undefined when it was stopped before
 */
export type NoFits = (other: Stance, piece: Stance, control: Control) => Steps<Paths64 | undefined>;

/** Pairs of edges that cost as much to sweep along one another as one evaluation. */
const sweepsPerEvaluation = 400;

/** @param work works out a no-fit polygon */
export function noFitCache(work: (other: Path64, piece: Path64) => Paths64 = noFit): NoFits {
  const known = new Map<string, Paths64>();
  return function* noFitOf(other, piece, control) {
    const key = `${other.box} ${other.turn} ${piece.box} ${piece.turn}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    yield* spend(control, (other.keepOut.length * piece.keepOut.length) / sweepsPerEvaluation);
    if (control.stop !== undefined) return undefined;
    const paths = work(other.keepOut, piece.keepOut);
    known.set(key, paths);
    return paths;
  };
}
