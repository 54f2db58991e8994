import type { Folded } from '../folding/proof-of.ts';
import { move } from '../geometry/plane.ts';
import { styleOf } from '../styles/registry.ts';
import type { IsSeam } from './painted.ts';

/**
 * The seam: where the paper of the pockets' fronts ends level. Pockets open to the left and right, so their fronts
 * meet along level edges; an edge that a folded corner turned a quarter belongs to the hem.
 */
export function seamOf({ plan, pattern, proof }: Folded): IsSeam {
  const rowOf = (panel: string | undefined) => panel?.split(', ')[0];
  const rows = new Set(styleOf(plan.spec).pockets.flatMap(({ front }) => front.map(rowOf)));
  return (face, from, to) => {
    const lies = proof.faces[face]?.lies;
    if (!lies || !rows.has(rowOf(pattern.faces[face]?.panel))) return false;
    const isLevel = (p: { y: number }, q: { y: number }) => Math.abs(p.y - q.y) < 1000;
    return isLevel(from, to) && isLevel(move(lies, from), move(lies, to));
  };
}
