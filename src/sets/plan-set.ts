import type { Nm } from '../../shared/lengths/nanometres.ts';
import { describeLength } from '../../shared/lengths/show-length.ts';
import type { NestProgress } from '../../shared/nesting/nesting.ts';
import type { CutPiece } from '../../shared/sets/cut-piece.ts';
import { type NestedPaper, papersToNest } from '../../shared/sets/nested-paper.ts';
import { paperTitle } from '../../shared/sets/paper-title.ts';
import type { SetProgress } from '../../shared/sets/set-progress.ts';
import type { SetSpec } from '../../shared/sets/set-spec.ts';
import type { PlannedSet } from '../../shared/sets/show-set-plan.ts';
import { type NestingPool, TooBusyError } from '../nesting/nesting-pool.ts';
import { CannotBeFolded } from '../problem/cannot-be-folded.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import { cutPieces } from './cut-pieces.ts';
import { GivenUp } from './given-up.ts';

export interface PlanSetOptions {
  /** Aborted when nobody waits for the answer any more. */
  readonly signal?: AbortSignal | undefined;
  /** Called about ten times a second while a paper is nested. */
  readonly onProgress?: ((progress: SetProgress) => void) | undefined;
}

/**
 * A set with its pieces solved and nested on its papers.
 * @throws GivenUp when the signal was aborted
 * @throws CannotBeFolded where a piece cannot be made, or lies on no sheet of its paper
 * @throws HttpProblem with 503 when too many nestings wait
 */
export async function planSet(
  set: SetSpec,
  pool: Pick<NestingPool, 'run'>,
  { signal, onProgress }: PlanSetOptions = {},
): Promise<PlannedSet> {
  const pieces = await cutPieces(set, signal);
  const papers: NestedPaper[] = [];
  const asked = papersToNest(set, pieces);
  for (const each of asked) {
    const options = {
      ...(signal ? { signal } : {}),
      timeLimitMs: (set.timeLimit * 1000) / asked.length,
      ...(onProgress
        ? {
            onProgress: ({ sheets, bound, evaluations }: NestProgress) =>
              onProgress({ paper: paperTitle(set, each.paper), sheets, bound, evaluations }),
          }
        : {}),
    };
    const nesting = await pool.run(each.input, options).catch((error: unknown) => {
      throw error instanceof TooBusyError
        ? new HttpProblem(503, 'Too many sets are being nested; try again soon.', [], { 'retry-after': '10' })
        : error;
    });
    if (signal?.aborted === true) throw new GivenUp();
    papers.push({ ...each, nesting });
  }
  refuseLeft(set, pieces, papers);
  return { set, pieces, papers };
}

function refuseLeft(set: SetSpec, pieces: readonly CutPiece[], papers: readonly NestedPaper[]): void {
  const errors = papers.flatMap((paper) =>
    paper.nesting.unplaced.map(({ piece }) => ({
      path: `/pieces/${paper.pieces[piece] ?? 0}`,
      message: tooLarge(set, pieces[paper.pieces[piece] ?? 0], paper),
      remedy: 'give it a larger paper, let it be turned, or make it smaller',
    })),
  );
  const [first] = errors;
  if (first) throw new CannotBeFolded({ message: first.message, errors, bound: 'sheet', remedies: [] });
}

function tooLarge(set: SetSpec, piece: CutPiece | undefined, { paper, areas }: NestedPaper): string {
  if (!piece) throw new Error('a nesting left over what it was not asked for');
  const size = (width: Nm, height: Nm) =>
    `${describeLength(Math.ceil(width), set.measure)} by ${describeLength(Math.ceil(height), set.measure)}`;
  const { width, height } = piece.drawing;
  const own = `${piece.name} is ${size(width, height)}${set.cutter?.kerf ? ' with its kerf' : ''}`;
  const usable = areas.map(({ reachWidth, reachHeight }) => size(reachWidth, reachHeight)).join(' or ');
  const where = set.cutter ? ', within the reach of the cutter' : '';
  const turns = { none: ' unturned', half: ' with its height along that of the sheet', quarter: '' }[
    piece.turns
  ];
  return `${own}, and does not fit${turns} on ${paperTitle(set, paper)}, of which ${usable} can be used${where}`;
}
