import { type Appearance, appearancesOf } from '../folding/appearance.ts';
import type { Folded } from '../folding/proof-of.ts';
import { contentsWarnings } from './contents-warnings.ts';
import { drawingWarnings } from './drawing-warnings.ts';
import { paperWarnings } from './paper-warnings.ts';
import { printWarnings } from './print-warnings.ts';
import { knockoutWarnings } from './show-knockouts.ts';
import type { Warning } from './warning.ts';

/** All warnings of a plan, in the order in which a maker meets them. */
export const warningsOf = (
  folded: Folded,
  appearances: readonly Appearance[] = appearancesOf(folded),
): readonly Warning[] => [
  ...paperWarnings(folded.plan),
  ...contentsWarnings(folded.plan, folded.proof.layers),
  ...drawingWarnings(folded.plan, folded.pattern),
  ...knockoutWarnings(folded),
  ...printWarnings(folded.plan, appearances),
];
