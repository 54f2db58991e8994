import { locksOf } from '../../creases/fold-program.ts';
import { lockPractice, slotCorners } from '../../creases/lock.ts';
import { flattenShape } from '../../geometry/flatten.ts';
import { isInside } from '../../geometry/inside.ts';
import { inverse, move } from '../../geometry/plane.ts';
import { polygon } from '../../geometry/walk.ts';
import { gapBetween } from './distances.ts';
import type { Checked, Finding } from './finding.ts';

/** Openings through a tongue, or so near to a slot that it tears out: nothing would hold there any more. */
export function cutLocks({ list, folded: { program, proof }, say }: Checked): readonly Finding[] {
  return list.flatMap((knockout) =>
    locksOf(program).flatMap(({ panel, tongue, to, neck, slot }): Finding[] => {
      const middle = { x: (neck[0].x + neck[1].x) / 2, y: (neck[0].y + neck[1].y) / 2 };
      const cuts = (name: string) =>
        knockout.cuts.filter(({ faces }) => faces.some((face) => face.panel === name));
      const common = {
        does: 'refuse',
        knockouts: [knockout.index],
        remedy: 'move it, make it smaller, or cut other layers',
      } as const;
      const through: Finding[] =
        cuts(tongue).length === 0
          ? []
          : [
              {
                ...common,
                code: 'lock-cut',
                message: `${knockout.title} is cut through a tongue that holds the ${panel}`,
                brief: 'tongue cut',
                at: [middle],
              },
            ];
      const near = cuts(to).flatMap(({ onForm }) => {
        const face = proof.faces.find((each) => each.panel === to);
        if (!face) return [];
        const lies = polygon(slotCorners(slot).map((corner) => move(face.lies, corner)));
        // an opening around all of a slot has its edges far from it
        const swallowed = isInside(onForm, lies.start);
        const between = gapBetween(flattenShape(onForm), flattenShape([lies]));
        const gap = swallowed ? { ...between, distance: 0 } : between;
        return gap.distance < lockPractice.web ? [{ ...gap, at: move(inverse(face.lies), gap.at) }] : [];
      });
      const [nearest] = near.toSorted((one, other) => one.distance - other.distance);
      if (!nearest) return through;
      const size = Math.round(nearest.distance / 1e4) * 1e4;
      return [
        ...through,
        {
          ...common,
          code: 'near-slot',
          message: `${knockout.title} leaves ${say(size)} of paper beside the slot that holds the ${panel}: less than ${say(lockPractice.web)} tears`,
          brief: `${say(size)} to a slot`,
          size,
          limit: lockPractice.web,
          at: [nearest.at],
        },
      ];
    }),
  );
}
