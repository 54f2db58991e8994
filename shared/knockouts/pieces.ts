import type { Folded } from '../folding/proof-of.ts';
import { isOuter } from '../geometry/area.ts';
import { subtract, unite } from '../geometry/clip/combine.ts';
import { offset } from '../geometry/clip/offset.ts';
import type { Shape } from '../geometry/contour.ts';
import { mm } from '../lengths/nanometres.ts';
import type { KnockoutOf } from './knockout-spec.ts';
import type { PlacedKnockout } from './placed.ts';

/** Something to cut from another paper, to go with a knockout. */
export interface Piece {
  /** What to ask for it by: `inlay-2` belongs to the second knockout. */
  readonly name: string;
  /** What people call it within a sentence. */
  readonly title: string;
  readonly kind: 'inlay' | 'frame';
  /** The knockout's place in the spec's list. */
  readonly knockout: number;
  /** What is cut, as it is seen when it is in its place. */
  readonly shape: Shape;
}

/** Room for tape around an opening; common practice. */
const usualMargin = mm(6);

/** The inlays and frames that a plan's knockouts ask for. */
export function piecesOf({ plan, knockouts }: Folded): readonly Piece[] {
  return (knockouts?.list ?? []).flatMap((placed) => {
    const spec = plan.spec.knockouts?.[placed.index];
    return spec?.kind === 'figure' && spec.inlay ? piecesFor(placed, spec.inlay) : [];
  });
}

function piecesFor(
  { index, title, figure }: PlacedKnockout,
  { margin = usualMargin, frame }: NonNullable<KnockoutOf<'figure'>['inlay']>,
): Piece[] {
  // counters are covered too: only the opening's outer edge counts
  const filled = figure.filter(isOuter);
  const inlay: Piece = {
    name: `inlay-${index + 1}`,
    title: `inlay of ${title}`,
    kind: 'inlay',
    knockout: index,
    shape: offset(filled, margin).filter(isOuter),
  };
  if (!frame) return [inlay];
  const reveal = frame.reveal ?? 0;
  const inner = reveal === 0 ? unite([filled]) : offset(filled, reveal);
  return [
    inlay,
    {
      name: `frame-${index + 1}`,
      title: `frame around ${title}`,
      kind: 'frame',
      knockout: index,
      shape: subtract(offset(filled, reveal + frame.width), inner.filter(isOuter)),
    },
  ];
}
