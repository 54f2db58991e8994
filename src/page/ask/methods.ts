import { applyConvention } from '../../../shared/drawing/apply-convention.ts';
import { drawFolder } from '../../../shared/drawing/draw-folder.ts';
import type { FoldDocument } from '../../../shared/fold-format/fold-document.ts';
import { type Folded, proofOf } from '../../../shared/folding/proof-of.ts';
import { showPlan } from '../../../shared/plan-reply/show-plan.ts';
import { nearest, shortagesOf } from '../../../shared/solver/refusal.ts';
import { type Misfit, solveFolder } from '../../../shared/solver/solve-folder.ts';
import { type FolderSpec, folderSpec } from '../../../shared/spec/folder-spec.ts';
import { closedScene } from '../../../shared/views/closed-scene.ts';
import { flatScene } from '../../../shared/views/flat-scene.ts';
import { halfOpenScene } from '../../../shared/views/half-open-scene.ts';
import type { Answer, Fault, Further } from './answer.ts';
import { askewIn } from './askew.ts';
import { catalogue } from './catalogue.ts';
import { faultsOf, pointerOf } from './faults.ts';
import { gripsIn } from './grips.ts';
import { openSheetOf } from './open-sheet.ts';
import { sightOf } from './sight.ts';
import type { Solid } from './solid.ts';
import { madeFor } from './style-form.ts';
import { pieceOf, placed } from './tools.ts';
import { writeDrawing } from './write-drawing.ts';

/** What becomes of a spec in the core. */
type Outcome =
  | { readonly kind: 'empty' }
  | { readonly kind: 'unreadable'; readonly faults: readonly Fault[] }
  | { readonly kind: 'refused'; readonly spec: FolderSpec; readonly misfit: Misfit }
  | { readonly kind: 'unproved'; readonly faults: readonly Fault[] }
  | { readonly kind: 'folded'; readonly folded: Folded };

const isEmpty = (value: unknown): boolean =>
  typeof value === 'object' && value !== null ? Object.values(value).every(isEmpty) : value === undefined;

/** Nothing was asked for yet. */
function asksNothing(spec: unknown): boolean {
  if (typeof spec !== 'object' || spec === null) return true;
  const { style, contents, card, dimensions } = spec as Readonly<Record<string, unknown>>;
  return [contents, card, dimensions].every(isEmpty) && madeFor(style) !== 'nothing';
}

function outcomeOf(spec: unknown): Outcome {
  if (asksNothing(spec)) return { kind: 'empty' };
  const read = folderSpec.safeParse(spec);
  if (!read.success) return { kind: 'unreadable', faults: faultsOf(read.error) };
  const solution = solveFolder(read.data);
  if (!solution.ok) return { kind: 'refused', spec: read.data, misfit: nearest(solution.misfits) };
  const folded = proofOf(solution.plan);
  const placing = placed(folded);
  if (placing && !placing.ok)
    return {
      kind: 'unproved',
      faults: placing.faults.map(({ path, message, remedy }) => ({ path: pointerOf(path), message, remedy })),
    };
  const failing = folded.proof.checks.filter(({ holds }) => !holds);
  return failing.length === 0
    ? { kind: 'folded', folded: placing ? { ...folded, knockouts: placing.knockouts } : folded }
    : { kind: 'unproved', faults: failing.map(({ message }) => ({ path: '', message })) };
}

/** The spec that was asked about last, since more is asked about it soon after. */
let last: { readonly key: string; readonly outcome: Outcome } | undefined;

function outcomeFor(spec: unknown): Outcome {
  const key = JSON.stringify(spec) ?? '';
  if (last?.key !== key) last = { key, outcome: outcomeOf(spec) };
  return last.outcome;
}

function foldedOrThrow(spec: unknown): Folded {
  const outcome = outcomeFor(spec);
  if (outcome.kind !== 'folded') throw new Error('there is no folder to draw');
  return outcome.folded;
}

/** Room for a scene, in millimetres of its own page. */
const alone = { width: 260, height: 138 };

/** What the checks of knockouts do not let pass. */
const forbidsOf = ({ knockouts }: Folded): readonly Fault[] =>
  (knockouts?.findings ?? [])
    .filter(({ does }) => does === 'refuse')
    .map(({ knockouts: [first], message, remedy }) => ({
      path: first === undefined ? '/knockouts' : `/knockouts/${first}`,
      message,
      ...(remedy === undefined ? {} : { remedy }),
    }));

const shortages = (spec: FolderSpec, misfit: Misfit): readonly Fault[] =>
  shortagesOf(misfit, spec.measure).map(({ path, message }) => ({ path, message }));

/** What the page asks of the core. Every method takes a spec as it would be sent to the service. */
export const methods = {
  /** All that can be chosen from. */
  catalogue,

  /** The folder at once. */
  fold(spec: unknown): Answer {
    const outcome = outcomeFor(spec);
    switch (outcome.kind) {
      case 'empty':
        return { state: 'empty' };
      case 'unreadable':
        return { state: 'unreadable', faults: outcome.faults };
      case 'unproved':
        return { state: 'refused', faults: outcome.faults };
      case 'refused':
        return { state: 'refused', faults: shortages(outcome.spec, outcome.misfit) };
      case 'folded': {
        const { folded } = outcome;
        const outside = sightOf(flatScene(folded, 'outside', alone));
        const inside = sightOf(flatScene(folded, 'inside', alone));
        return {
          state: 'folded',
          plan: showPlan(folded, { alternatives: [], fittings: undefined }),
          open: openSheetOf(folded),
          askew: askewIn(folded),
          forbids: forbidsOf(folded),
          grips: [...gripsIn(folded, 'outside', outside), ...gripsIn(folded, 'inside', inside)],
          pockets: folded.proof.pockets.map(({ name }) => name),
          sights: {
            outside,
            inside,
            closed: sightOf(closedScene(folded, alone)),
            'half-open': sightOf(halfOpenScene(folded, alone)),
          },
        };
      }
    }
  },

  /** What takes longer: other ways that work, and every step. */
  async further(spec: unknown): Promise<Further> {
    const outcome = outcomeFor(spec);
    const { furtherTo, helpFor } = await import('./afterwards.ts');
    switch (outcome.kind) {
      case 'refused':
        return helpFor(outcome.spec, outcome.misfit);
      case 'folded':
        return furtherTo(outcome.folded);
      default:
        return { proposals: [], steps: [], fits: [] };
    }
  },

  /** The layered SVG, as the service writes it. */
  drawing(spec: unknown): string {
    const folded = foldedOrThrow(spec);
    if (forbidsOf(folded).length > 0) throw new Error('it must not be cut so');
    return writeDrawing(applyConvention(drawFolder(folded), folded.plan.spec.convention));
  },

  /** The SVG of a piece from another paper. */
  piece(spec: unknown, name: string): string {
    const folded = foldedOrThrow(spec);
    const drawing = pieceOf(folded, name);
    if (!drawing) throw new Error(`there is no piece ${name}`);
    return writeDrawing(applyConvention(drawing, folded.plan.spec.convention));
  },

  /** Crease pattern and folded forms as FOLD 1.2. */
  async foldFile(spec: unknown, creator: string): Promise<FoldDocument> {
    const { foldFileOf } = await import('./afterwards.ts');
    return foldFileOf(foldedOrThrow(spec), creator);
  },

  /** What the fold in space needs; loaded with it. */
  async solid(spec: unknown): Promise<Solid> {
    const { solidOf } = await import('./solid-of.ts');
    return solidOf(foldedOrThrow(spec));
  },
} as const;

export type Methods = typeof methods;
