import { applyConvention } from '../../shared/drawing/apply-convention.ts';
import { drawFolder } from '../../shared/drawing/draw-folder.ts';
import type { Folded } from '../../shared/folding/proof-of.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { foldOrRefuse } from '../../src/folders/fold-or-refuse.ts';
import { writeSvg } from '../../src/svg/write-svg.ts';
import { pointsAlong } from './curve-points.ts';
import { backToBlank, type Drawn, groupNamed } from './drawn.ts';
import { type At, readSvg } from './read-svg.ts';

/** Draws a spec with knockouts, also where its checks would refuse it for a cutter. */
export function drawCutOut(raw: object): Drawn & { readonly folded: Folded } {
  const spec = folderSpec.parse(raw);
  const folded = foldOrRefuse(spec);
  const svg = writeSvg(applyConvention(drawFolder(folded), spec.convention));
  return { raw, plan: folded.plan, svg, read: readSvg(svg), folded };
}

/** The closed lines of a layer as polygons on the blank, in millimetres. */
export function polygonsOf(drawn: Drawn, id: 'knockout' | 'cut'): readonly (readonly At[])[] {
  const back = backToBlank(drawn);
  return (groupNamed(drawn.read, id)?.paths ?? []).flatMap(({ subpaths }) =>
    subpaths.map(({ pieces }) => pieces.flatMap((piece) => pointsAlong(piece)).map(back)),
  );
}

/** Square millimetres of a polygon. */
export function areaOfPolygon(polygon: readonly At[]): number {
  const twice = polygon.reduce((sum, p, index) => {
    const q = polygon[(index + 1) % polygon.length] ?? p;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  return Math.abs(twice) / 2;
}

/** Whether a point lies within an odd number of polygons. */
export const isWithin = (polygons: readonly (readonly At[])[], { x, y }: At): boolean =>
  polygons.reduce((odd, polygon) => {
    const crossed = polygon.filter((p, index) => {
      const q = polygon[(index + 1) % polygon.length] ?? p;
      return p.y > y !== q.y > y && x < p.x + ((y - p.y) / (q.y - p.y)) * (q.x - p.x);
    });
    return crossed.length % 2 === 1 ? !odd : odd;
  }, false);
