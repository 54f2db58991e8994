import type { Folded } from '../folding/proof-of.ts';
import { unite } from '../geometry/clip/combine.ts';
import { CHORD_ERROR, chordsFor } from '../geometry/flatten.ts';
import { moveShape } from '../geometry/move-shape.ts';
import { walk } from '../geometry/walk.ts';
import type { Fault } from '../lettering/fault.ts';
import type { FontShelf } from '../lettering/font-choice.ts';
import { checkKnockouts } from './check-knockouts.ts';
import { facesMeant } from './chosen-faces.ts';
import { cutThrough } from './cut-through.ts';
import type { DesignContext } from './designs/design.ts';
import { designOf } from './designs/design-of.ts';
import { facesLeft } from './faces-left.ts';
import type { KnockoutSpec } from './knockout-spec.ts';
import { type Layers, layersOf } from './layers.ts';
import { slotsOf } from './open-slots.ts';
import { goneFrom, paperWithout } from './paper.ts';
import type { PlacedKnockout, Placing } from './placed.ts';
import { placesOf, toForm } from './places.ts';
import { titlesOf } from './titles.ts';

/**
 * Puts every knockout of a plan where it was designed, takes it through the layers, opens the sheet again, and checks
 * what is left of it.
 * @param fonts those that its lettering asks for
 */
export function placeKnockouts(folded: Folded, fonts: FontShelf): Placing {
  const { spec, arrangement } = folded.plan;
  const knockouts = spec.knockouts ?? [];
  const titles = titlesOf(knockouts);
  const { leastCornerRadius = 0, roundCorners = false } = spec.cutter ?? {};
  const context = {
    folded,
    fonts,
    caliper: arrangement.sheet.paper.caliper,
    places: placesOf(folded),
    cornerRadius: roundCorners ? leastCornerRadius : 0,
  };
  const layers = layersOf(folded);
  const results = knockouts.map((knockout, index) =>
    placeOne(knockout, index, titles[index] ?? '', context, layers),
  );
  const faults = results.flatMap((result, index) =>
    'faults' in result
      ? result.faults.map((fault) => ({ ...fault, path: ['knockouts', index, ...fault.path] }))
      : [],
  );
  if (faults.length > 0) return { ok: false, faults };
  const list = results.flatMap((result) => ('placed' in result ? [result.placed] : []));
  const tooMuch = detailFault(list);
  if (tooMuch) return { ok: false, faults: [tooMuch] };
  const { pattern, program } = folded;
  const cut = unite([...list.map(({ onBlank }) => onBlank), slotsOf(program)]);
  const paper = paperWithout(pattern, cut);
  const openings = goneFrom(pattern, cut, paper);
  const placed = { list, openings, paper, facesLeft: facesLeft(pattern, openings) };
  return { ok: true, knockouts: { ...placed, findings: checkKnockouts(folded, placed) } };
}

function placeOne(
  knockout: KnockoutSpec,
  index: number,
  title: string,
  context: DesignContext,
  layers: Layers,
): { readonly placed: PlacedKnockout } | { readonly faults: readonly Fault[] } {
  const designed = designOf(knockout, context);
  if (!designed.ok) return designed;
  const { design } = designed;
  const onForm = moveShape(design.figure, toForm(design.place));
  const chosen = facesMeant(design, onForm, layers);
  if ('fault' in chosen) return { faults: [chosen.fault] };
  const seenFrom = design.meant === 'seen-layer' ? design.place.side : undefined;
  const cuts = cutThrough(onForm, chosen.faces, layers, seenFrom);
  const onBlank = unite(cuts.map((cut) => cut.onBlank));
  return { placed: { ...design, index, title, onForm, cuts, onBlank } };
}

/**
 * How many straight parts all openings may have together, once curves are followed: what comes after takes about a
 * tenth of a second for each thousand.
 */
const MOST_CHORDS = 20_000;

function detailFault(list: readonly PlacedKnockout[]): Fault | undefined {
  let chords = 0;
  for (const { index, title, onBlank } of list) {
    for (const contour of onBlank)
      walk(contour, (from, stretch) => {
        chords += chordsFor(from, stretch, CHORD_ERROR);
      });
    if (chords > MOST_CHORDS)
      return {
        path: ['knockouts', index],
        message: `with ${title} the knockouts have more than ${MOST_CHORDS} straight parts, through all layers and once curves are followed within 0.01 mm`,
        remedy: 'repeat it less often, use plainer figures, or cut fewer layers',
      };
  }
  return undefined;
}
