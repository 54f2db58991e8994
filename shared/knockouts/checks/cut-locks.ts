import { locksOf } from '../../creases/fold-program.ts';
import { type Lock, lockPractice } from '../../creases/lock.ts';
import { boxCorners } from '../../geometry/bounds.ts';
import { flattenShape } from '../../geometry/flatten.ts';
import { isInside } from '../../geometry/inside.ts';
import { inverse, move, type Point } from '../../geometry/plane.ts';
import type { PlacedKnockout } from '../placed.ts';
import { type Gap, gapToSegment } from './distances.ts';
import type { Checked, Finding } from './finding.ts';

/**
 * Openings through a tongue, or so near to its neck or to its slot that it tears off or out: nothing would hold there any
 * more.
 */
export function cutLocks({ list, folded, say }: Checked): readonly Finding[] {
  const { web } = lockPractice;
  return list.flatMap((knockout) =>
    locksOf(folded.program).flatMap((lock): Finding[] => {
      const { panel, tongue, to, neck, slot } = lock;
      const common = {
        does: 'refuse',
        knockouts: [knockout.index],
        remedy: 'move it, make it smaller, or cut other layers',
      } as const;
      const tooNear = (gap: Gap | undefined, code: string, beside: string, name: string): Finding[] => {
        if (!gap || gap.distance >= web) return [];
        const size = Math.round(gap.distance / 1e4) * 1e4;
        return [
          {
            ...common,
            code,
            message: `${knockout.title} leaves ${say(size)} of paper beside the ${beside} that holds the ${panel}: less than ${say(web)} tears`,
            brief: `${say(size)} to a ${name}`,
            size,
            limit: web,
            at: [gap.at],
          },
        ];
      };
      return [
        ...(cutsIn(knockout, tongue).length === 0 ? [] : [{ ...common, ...throughTongue(knockout, lock) }]),
        ...tooNear(gapTo(knockout, panel, neck, folded), 'near-tongue', 'tongue', 'tongue'),
        ...tooNear(gapTo(knockout, to, boxCorners(slot), folded), 'near-slot', 'slot', 'slot'),
      ];
    }),
  );
}

const cutsIn = ({ cuts }: PlacedKnockout, panel: string) =>
  cuts.filter(({ faces }) => faces.some((face) => face.panel === panel));

const throughTongue = ({ title }: PlacedKnockout, { panel, neck: [p, q] }: Lock) => ({
  code: 'lock-cut',
  message: `${title} is cut through a tongue that holds the ${panel}`,
  brief: 'tongue cut',
  at: [{ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 }],
});

/**
 * The paper that a knockout leaves in a panel beside something there, and where on the open sheet; none where it does not
 * cut that panel.
 * @param corners of what is beside it, on the open sheet
 */
function gapTo(
  knockout: PlacedKnockout,
  panel: string,
  corners: readonly Point[],
  { proof }: Checked['folded'],
): Gap | undefined {
  const face = proof.faces.find((each) => each.panel === panel);
  const lies = face && corners.map((corner) => move(face.lies, corner));
  const [start] = lies ?? [];
  if (!lies || !start) return undefined;
  const gaps = cutsIn(knockout, panel).flatMap(({ onForm }) => {
    const polygons = flattenShape(onForm);
    // an opening around all of it has its edges far from it
    const swallowed = isInside(onForm, start);
    return lies.map((from, index): Gap => {
      const gap = gapToSegment(polygons, from, lies[(index + 1) % lies.length] ?? from);
      return { at: move(inverse(face.lies), gap.at), distance: swallowed ? 0 : gap.distance };
    });
  });
  return gaps.toSorted((one, other) => one.distance - other.distance)[0];
}
