import type { GlueStep, GlueStrip } from '../../creases/fold-program.ts';
import type { FlatFace } from '../../folding/flat-faces.ts';
import { areaOf } from '../../geometry/area.ts';
import { intersect } from '../../geometry/clip/combine.ts';
import type { Shape } from '../../geometry/contour.ts';
import { flattenShape } from '../../geometry/flatten.ts';
import { inverse, move, type Point } from '../../geometry/plane.ts';
import { polygon } from '../../geometry/walk.ts';
import type { PlacedKnockout } from '../placed.ts';
import { gapBetween } from './distances.ts';
import type { Checked, Finding } from './finding.ts';

/** What loses more than this share of its glue is no longer held; common practice. */
const mostLost = 0.5;

/** A strip of glue where it lies in the finished form. */
interface Laid {
  readonly step: GlueStep;
  readonly strip: GlueStrip;
  readonly onForm: Shape;
  readonly owner: FlatFace;
}

/** Openings in a layer that is glued, through the glue or near it, by steps of gluing. */
export function cutGlue(checked: Checked): readonly Finding[] {
  const laid = stripsIn(checked);
  return checked.list.flatMap((knockout) =>
    [...new Set(laid.map(({ step }) => step))].flatMap((step) =>
      findingOf(
        knockout,
        laid.filter((each) => each.step === step),
        checked,
      ),
    ),
  );
}

function stripsIn({ folded: { program, proof } }: Checked): readonly Laid[] {
  return proof.bonds.flatMap(({ strip, owner, box }) => {
    const step = program.steps.find(
      (each): each is GlueStep => each.kind === 'glue' && each.strips.includes(strip),
    );
    const upright = owner.turned ? box.corners.toReversed() : box.corners;
    return step ? [{ step, strip, owner, onForm: [polygon(upright)] }] : [];
  });
}

function findingOf(knockout: PlacedKnockout, laid: readonly Laid[], checked: Checked): Finding[] {
  const { limits, say } = checked;
  let [nearest, cut, worst] = [Infinity, 0, 0];
  let at: Point | undefined;
  for (const { strip, onForm, owner } of laid) {
    const glued = knockout.cuts.filter(({ faces }) =>
      faces.some(({ panel }) => panel === strip.panel || panel === strip.to),
    );
    for (const layer of glued) {
      const through = areaOf(intersect(onForm, layer.onForm));
      const gap = gapBetween(flattenShape(layer.onForm), flattenShape(onForm));
      cut += through;
      worst = Math.max(worst, through / areaOf(onForm));
      if (through === 0 && gap.distance >= nearest) continue;
      nearest = through > 0 ? 0 : gap.distance;
      at = move(inverse(owner.lies), gap.at);
    }
  }
  if (at === undefined || (cut === 0 && nearest >= limits.toGlue)) return [];
  const name = laid[0]?.step.holds ?? '';
  const common = { knockouts: [knockout.index], at: [at] };
  if (cut === 0) {
    const size = Math.round(nearest / 1e4) * 1e4;
    return [
      {
        ...common,
        code: 'near-glue',
        does: 'tell',
        message: `${knockout.title} comes within ${say(size)} of the glue at the ${name}: nearer than ${say(limits.toGlue)} it may be pressed out into the opening`,
        remedy: 'move it away, or keep the glue short there',
        brief: `${say(size)} to glue`,
        size,
        limit: limits.toGlue,
      },
    ];
  }
  const percent = Math.max(1, Math.round(100 * worst));
  const all = laid.reduce((sum, { onForm }) => sum + areaOf(onForm), 0);
  const refuses = cut > mostLost * all;
  return [
    {
      ...common,
      code: refuses ? 'glue-cut-away' : 'glue-cut',
      does: refuses ? 'refuse' : 'tell',
      message: `${knockout.title} is cut through the glue at the ${name}, ${percent} % of a strip${refuses ? ': what is left does not hold' : ': leave the glue out there'}`,
      remedy: 'move it, make it smaller, or cut other layers',
      brief: `${percent} % of a glue strip cut`,
    },
  ];
}
