import type { Drawing } from '../../../shared/drawing/drawing.ts';
import type { Folded } from '../../../shared/folding/proof-of.ts';
import type { Placing } from '../../../shared/knockouts/placed.ts';
import type { FontChoice, FontShelf } from '../../../shared/lettering/font-choice.ts';
import { loadClipper } from './clipper-later.ts';

/*
 * What only some designs need is loaded for the first that does: what clips, what places knockouts, and what reads
 * fonts. The core itself does not wait, so it is asked once everything is there.
 */
let tools: typeof import('./knockout-tools.ts') | undefined;
let shelf: FontShelf = new Map();

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

const knockoutsIn = (spec: unknown): readonly unknown[] =>
  isObject(spec) && Array.isArray(spec.knockouts) ? spec.knockouts : [];

/** The font of each knockout that is lettering. */
const fontsIn = (spec: unknown): readonly FontChoice[] =>
  knockoutsIn(spec).flatMap((knockout) => {
    const figure = isObject(knockout) ? knockout.figure : undefined;
    if (!isObject(figure) || figure.lettering === undefined) return [];
    return [(figure.font ?? 'plain') as FontChoice];
  });

/** Loads what a spec needs; ask before any method. */
export async function prepareFor(spec: unknown): Promise<void> {
  const hasKnockouts = knockoutsIn(spec).length > 0;
  const hasKerf = isObject(spec) && isObject(spec.cutter) && spec.cutter.kerf !== undefined;
  if (!hasKnockouts && !hasKerf) return;
  await loadClipper();
  if (!hasKnockouts) return;
  tools ??= await import('./knockout-tools.ts');
  const fonts = fontsIn(spec);
  if (fonts.length > 0) shelf = await (await import('./fonts.ts')).openFonts(fonts);
}

/** Places the knockouts of a folded plan; nothing where it has none. */
export function placed(folded: Folded): Placing | undefined {
  if ((folded.plan.spec.knockouts ?? []).length === 0) return undefined;
  return toolsThere().placeKnockouts(folded, shelf);
}

/** A piece that is cut from another paper, by the name that the plan gives it; nothing where there is none. */
export const pieceOf = (folded: Folded, name: string): Drawing | undefined =>
  toolsThere().drawPiece(folded, name);

function toolsThere() {
  if (!tools) throw new Error('what places knockouts was not loaded');
  return tools;
}
