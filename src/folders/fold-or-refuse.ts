import { type Folded, proofOf } from '../../shared/folding/proof-of.ts';
import type { FontShelf } from '../../shared/lettering/font-choice.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { plans } from '../metrics/topics.ts';
import { CannotBeFolded } from '../problem/cannot-be-folded.ts';
import { placeOrRefuse } from './cut-or-refuse.ts';
import { noFonts } from './fonts-for.ts';
import { solveOrRefuse } from './solve-or-refuse.ts';

function proveOrRefuse(spec: FolderSpec): Folded {
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

/**
 * The plan for a spec, folded and proved, with its knockouts placed.
 * @param fonts from `fontsFor`, where the spec has lettering
 * @throws CannotBeFolded when nothing fits, when the proof fails, or when a knockout cannot be placed: then there is no
 *   drawing
 */
export function foldOrRefuse(spec: FolderSpec, fonts: FontShelf = noFonts): Folded {
  try {
    const folded = placeOrRefuse(proveOrRefuse(spec), fonts);
    plans.tell({ style: spec.style, outcome: 'solved' });
    return folded;
  } catch (error) {
    if (error instanceof CannotBeFolded) plans.tell({ style: spec.style, outcome: 'refused' });
    throw error;
  }
}
