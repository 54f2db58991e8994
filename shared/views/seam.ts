import { covers } from '../folding/flat-faces.ts';
import type { Folded } from '../folding/proof-of.ts';
import { move } from '../geometry/plane.ts';
import { styleOf } from '../styles/registry.ts';
import type { IsSeam } from './painted.ts';

/** The seam: where the paper of one of two panels that meet there ends on the other. */
export function seamOf({ plan, pattern, proof }: Folded): IsSeam {
  const partners = new Map(
    styleOf(plan.spec).seams.flatMap(([one, other]) => [
      [one, other],
      [other, one],
    ]),
  );
  return (face, from, to) => {
    const lies = proof.faces[face]?.lies;
    const partner = partners.get(pattern.faces[face]?.panel ?? '');
    if (!lies || partner === undefined) return false;
    const { x, y } = move(lies, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
    return proof.faces.some((other) => other.panel === partner && covers(other, x, y));
  };
}
