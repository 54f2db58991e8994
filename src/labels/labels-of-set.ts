import { labelsOf } from '../../shared/labels/labels-of.ts';
import type { LabelsWish } from '../../shared/labels/labels-query.ts';
import type { SetSpec } from '../../shared/sets/set-spec.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import { cutPieces } from '../sets/cut-pieces.ts';
import { writeLabels } from './write-labels.ts';

/** A file that a browser can still show. */
const MOST_LABELS = 1000;

/**
 * The labels and cards of a set as a PDF.
 * @param made the time that the document tells
 * @param signal aborted when nobody waits for the labels any more
 * @throws GivenUp when the signal was aborted
 * @throws CannotBeFolded where a piece cannot be made
 * @throws HttpProblem with 422 for more than a thousand kits
 */
export async function labelsOfSet(
  set: SetSpec,
  wish: LabelsWish,
  made: Date,
  signal?: AbortSignal,
): Promise<Buffer> {
  if (set.kits > MOST_LABELS) throw tooMany(set.kits);
  return writeLabels(labelsOf(set, await cutPieces(set, signal), wish), wish, made);
}

const tooMany = (kits: number): HttpProblem => {
  const message = `${kits} kits are more than one file of labels has`;
  const remedy = `ask for at most ${MOST_LABELS} kits at a time`;
  return new HttpProblem(422, `${message}; ${remedy}.`, [{ path: '/kits', message, remedy }]);
};
