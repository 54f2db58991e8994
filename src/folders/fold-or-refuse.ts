import { type Folded, proofOf } from '../../shared/folding/proof-of.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { CannotBeFolded } from '../problem/cannot-be-folded.ts';
import { solveOrRefuse } from './solve-or-refuse.ts';

/**
 * The plan for a spec, folded and proved.
 * @throws CannotBeFolded when nothing fits, or when the proof fails: then there is no drawing
 */
export function foldOrRefuse(spec: FolderSpec): Folded {
  const folded = proofOf(solveOrRefuse(spec));
  const failing = folded.proof.checks.filter(({ holds }) => !holds);
  if (failing.length === 0) return folded;
  throw new CannotBeFolded({
    message: `the sheet does not fold into what was promised: ${failing[0]?.message}`,
    errors: failing.map(({ name, message }) => ({ path: '', message: `${name}: ${message}` })),
    bound: failing[0]?.name,
    remedies: [],
  });
}
