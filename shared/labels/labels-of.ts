import { goesIn } from '../guide/goes-in.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { CutPiece } from '../sets/cut-piece.ts';
import { ribbonNeeded } from '../sets/lengths-needed.ts';
import type { SetSpec } from '../sets/set-spec.ts';
import { styleOf } from '../styles/registry.ts';
import { sentence } from '../views/part-names.ts';
import type { LabelLine, Labels } from './labels.ts';
import type { LabelsWish } from './labels-query.ts';
import { scoreCard } from './score-card.ts';

/** Labels for every kit of a set, and a card for each piece of it that is folded. Spoilt pieces get none. */
export function labelsOf(
  set: SetSpec,
  pieces: readonly CutPiece[],
  { print }: Pick<LabelsWish, 'print'>,
): Labels {
  const title = set.title ?? 'Kit';
  const lines = kitLines(set, pieces);
  const numbers = Array.from({ length: set.kits }, (_, index) => index + 1);
  return {
    title: `${title}: labels and cards`,
    count: set.kits,
    kits: numbers.map((number) => ({ heading: `${title}: ${number} of ${set.kits}`, lines })),
    cards: pieces.flatMap(({ name, spec, folded }) =>
      'make' in spec && folded && folded.program.steps.length > 0
        ? [scoreCard(sentence(name), folded, { print, shows: spec.shows ?? 'outside' })]
        : [],
    ),
  };
}

function kitLines(set: SetSpec, pieces: readonly CutPiece[]): readonly LabelLine[] {
  const ribbon = ribbonNeeded(set, pieces);
  return [
    { lead: 'For', text: '', toFillIn: true },
    ...pieces.map((piece) => ({
      lead: `${piece.spec.perKit} × ${piece.name}`,
      text: aboutPiece(set, piece),
    })),
    ...(ribbon ? [{ lead: '1 × ribbon', text: describeLength(ribbon.each, set.measure) }] : []),
  ];
}

function aboutPiece({ measure }: SetSpec, { closed, blank, folded, spec }: CutPiece): string {
  const size = ({ width, height }: { readonly width: number; readonly height: number }) =>
    `${describeLength(width, measure)} by ${describeLength(height, measure)}`;
  if (!closed || !folded || !('make' in spec)) return size(blank);
  const holds = goesIn(folded.plan);
  return [
    `${styleOf(spec.make).title}, finished ${size(closed)}`,
    ...(holds === undefined ? [] : [`to hold ${holds}`]),
  ].join('; ');
}
