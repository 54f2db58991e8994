import { areaOf } from '../../geometry/area.ts';
import { intersect } from '../../geometry/clip/combine.ts';
import { moveShape, shift } from '../../geometry/move-shape.ts';
import { rectangleAt } from '../../geometry/polygons.ts';
import { polygon } from '../../geometry/walk.ts';
import { extentOf } from '../anchored.ts';
import type { PlacedKnockout } from '../placed.ts';
import type { Checked, Finding } from './finding.ts';

/** Less than this share beyond the place's edge comes from rounding. */
const UNSEEN = 1e-4;

/** Figures that lie beyond the place that they are on, in part or wholly. */
export const offPlace = ({ list }: Checked): readonly Finding[] =>
  list.flatMap((knockout): Finding[] => {
    const { index, title, place, onBlank } = knockout;
    if (onBlank.length === 0)
      return [
        {
          code: 'nothing-cut',
          does: 'refuse',
          knockouts: [index],
          message: `${title} cuts nothing: no layer that it is meant for lies there`,
          remedy: `move it onto the ${place.name}, or cut other layers`,
          brief: 'cuts nothing',
          at: [],
        },
      ];
    if (knockout.atEdge) return [];
    const off = 1 - shareOn(knockout);
    if (off <= UNSEEN) return [];
    const percent = Math.max(1, Math.round(100 * off));
    return [
      {
        code: 'off-place',
        does: 'tell',
        knockouts: [index],
        message: `${percent} % of ${title} lies beyond the ${place.name}`,
        remedy: 'move it or make it smaller if that is not meant',
        brief: `${percent} % off its place`,
        at: [],
      },
    ];
  });

function shareOn({ place, figure }: PlacedKnockout): number {
  const { width, height } = extentOf(place);
  const rectangle = moveShape([polygon(rectangleAt(width, height))], shift(width / 2, height / 2));
  return areaOf(intersect(figure, rectangle)) / areaOf(figure);
}
