import type { FoldDocument } from '../../../shared/fold-format/fold-document.ts';
import { toFold } from '../../../shared/fold-format/to-fold.ts';
import type { Folded } from '../../../shared/folding/proof-of.ts';
import { showRemedy } from '../../../shared/plan-reply/show-plan.ts';
import { alternativesTo } from '../../../shared/solver/alternatives.ts';
import { fittingsOf } from '../../../shared/solver/fits.ts';
import { remediesFor } from '../../../shared/solver/remedies.ts';
import type { Misfit } from '../../../shared/solver/solve-folder.ts';
import type { FolderSpec } from '../../../shared/spec/folder-spec.ts';
import { stepScenes } from '../../../shared/views/step-scenes.ts';
import type { Fit, Further } from './answer.ts';
import { sightOf } from './sight.ts';

/*
 * What the first picture does not need. The page asks for it as soon as that is shown, so it is there when the network is
 * gone.
 */

/** Room for a step, in millimetres of its own page. */
const asStep = { width: 120, height: 120 };

const fitsOf = ({ plan }: Folded): readonly Fit[] =>
  plan.spec.contents === undefined
    ? fittingsOf(plan).map(({ item, envelope, perPocket }) => ({
        item: item.title,
        perPocket,
        ...(envelope === undefined ? {} : { envelope: envelope.title }),
      }))
    : [];

/** Other ways than a folder that works, and every step of it. */
export const furtherTo = (folded: Folded): Further => ({
  proposals: alternativesTo(folded.plan).map(showRemedy),
  steps: stepScenes(folded, asStep).map((scene) => ({ words: scene.heading, sight: sightOf(scene) })),
  fits: fitsOf(folded),
});

/** What would help where nothing works. */
export const helpFor = (spec: FolderSpec, misfit: Misfit): Further => ({
  proposals: remediesFor(spec, misfit).map(showRemedy),
  steps: [],
  fits: [],
});

export const foldFileOf = (folded: Folded, creator: string): FoldDocument => toFold(folded, creator);
