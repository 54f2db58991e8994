import { type NestedPaper, papersToNest } from '../../shared/sets/nested-paper.ts';
import { paperTitle } from '../../shared/sets/paper-title.ts';
import type { SetSpec } from '../../shared/sets/set-spec.ts';
import type { PlannedSet } from '../../shared/sets/show-set-plan.ts';
import { type NestingPool, TooBusyError } from '../nesting/nesting-pool.ts';
import { CannotBeFolded } from '../problem/cannot-be-folded.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import { cutPieces } from './cut-pieces.ts';

/**
 * A set with its pieces solved and nested on its papers.
 * @param signal aborted when nobody waits for the answer any more
 * @throws CannotBeFolded where a piece cannot be made, or lies on no sheet of its paper
 * @throws HttpProblem with 503 when too many nestings wait
 */
export async function planSet(
  set: SetSpec,
  pool: Pick<NestingPool, 'run'>,
  signal?: AbortSignal,
): Promise<PlannedSet> {
  const pieces = await cutPieces(set);
  const papers: NestedPaper[] = [];
  for (const asked of papersToNest(set, pieces)) {
    const nesting = await pool.run(asked.input, signal ? { signal } : {}).catch((error: unknown) => {
      throw error instanceof TooBusyError
        ? new HttpProblem(503, 'Too many sets are being nested; try again soon.', [], { 'retry-after': '10' })
        : error;
    });
    papers.push({ ...asked, nesting });
  }
  refuseLeft(set, papers);
  return { set, pieces, papers };
}

function refuseLeft(set: SetSpec, papers: readonly NestedPaper[]): void {
  const errors = papers.flatMap(({ paper, pieces, nesting }) =>
    nesting.unplaced.map(({ piece }) => ({
      path: `/pieces/${pieces[piece] ?? 0}`,
      message: `${set.pieces[pieces[piece] ?? 0]?.name} lies on no sheet of ${paperTitle(set, paper)}${set.cutter ? ' within the reach of the cutter' : ''}`,
      remedy: 'give it a larger paper, let it be turned, or make it smaller',
    })),
  );
  const [first] = errors;
  if (first) throw new CannotBeFolded({ message: first.message, errors, bound: 'sheet', remedies: [] });
}
