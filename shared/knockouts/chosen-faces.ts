import type { FlatFace } from '../folding/flat-faces.ts';
import { intersect } from '../geometry/clip/combine.ts';
import type { Shape } from '../geometry/contour.ts';
import { polygon } from '../geometry/walk.ts';
import type { Fault } from '../lettering/fault.ts';
import type { Design } from './designs/design.ts';
import type { Layers } from './layers.ts';
import { unknownName } from './unknown-name.ts';

/** Which faces a knockout may cut, by index, or which name of a layer does not lie there. */
export type Chosen = { readonly faces: ReadonlySet<number> } | { readonly fault: Fault };

/** The faces of a place that a knockout is meant for. @param shape where it lies on the flat form */
export function facesMeant({ meant, place }: Design, shape: Shape, layers: Layers): Chosen {
  const faces = layers.faces.filter(({ index }) => place.faces.has(index));
  const having = (is: (face: FlatFace) => boolean) => ({
    faces: new Set(faces.filter(is).map(({ index }) => index)),
  });
  if (typeof meant === 'string') return having(() => true);
  if ('panels' in meant) return having(({ panel }) => meant.panels.includes(panel));
  const under = faces.filter((face) => intersect(shape, [outlineOf(face)]).length > 0);
  for (const end of ['from', 'to'] as const) {
    if (under.some(({ panel }) => panel === meant[end])) continue;
    const there = [...new Set(under.map(({ panel }) => panel))];
    return { fault: unknownName('layer under it called', meant[end], there, ['through', end]) };
  }
  const ends = under.filter(({ panel }) => panel === meant.from || panel === meant.to);
  const heights = ends.map(({ height }) => height);
  const [lowest, highest] = [Math.min(...heights), Math.max(...heights)];
  const between = new Set(under.filter(({ height }) => height >= lowest && height <= highest));
  return having((face) => between.has(face));
}

const outlineOf = ({ corners, turned }: FlatFace) => polygon(turned ? corners.toReversed() : corners);
