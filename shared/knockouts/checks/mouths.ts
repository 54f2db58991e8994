import { isLevel } from '../../folding/pocket-place.ts';
import { mouthOf } from '../../folding/pockets.ts';
import type { Folded } from '../../folding/proof-of.ts';
import type { Point } from '../../geometry/plane.ts';
import { styleOf } from '../../styles/registry.ts';

/** A pocket's mouth on the flat form, and the panels that make the pocket. */
export interface Mouth {
  readonly panels: ReadonlySet<string>;
  readonly isOn: (point: Point) => boolean;
}

/** Points that are no further from a mouth than this, in nanometres, are on it. */
const ON = 2000;

export const mouthsIn = ({ plan, proof }: Folded): readonly Mouth[] =>
  styleOf(plan.spec).pockets.map((pocket) => {
    const at = mouthOf(pocket, proof.faces);
    const level = isLevel(pocket.mouth);
    return {
      panels: new Set([pocket.panel, ...pocket.behind, ...pocket.front]),
      isOn: ({ x, y }) => Math.abs((level ? y : x) - at) < ON,
    };
  });
