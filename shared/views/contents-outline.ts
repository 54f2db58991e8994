import { boxOf, type FlatFace } from '../folding/flat-faces.ts';
import type { Folded } from '../folding/proof-of.ts';
import { inverse, move, type Point } from '../geometry/plane.ts';
import { styleOf } from '../styles/registry.ts';
import type { Look } from './painted.ts';
import type { Mark, PagePoint } from './picture.ts';

/** An item as it stands in one pocket: its outline on the flat form, and the panel behind it. */
export interface Standing {
  readonly cover: FlatFace;
  readonly corners: readonly Point[];
}

/**
 * The items in each pocket at their true size, midway between spine and mouth. The bottom fold goes round them, so
 * that they stand above it by half of what they are thick.
 */
export function contentsIn({ plan, proof }: Folded): readonly Standing[] {
  const { load, arrangement, spec } = plan;
  if (!load) return [];
  const { width, height } = load.item;
  const [across, along] = arrangement.itemTurned ? [height, width] : [width, height];
  return styleOf(spec).pockets.flatMap(({ panel }) => {
    const covers = proof.faces.filter((face) => face.panel === panel);
    const [cover] = covers;
    if (!cover) return [];
    const box = boxOf(covers.flatMap(({ corners }) => corners));
    const left = (box.left + box.right - across) / 2;
    const bottom = box.bottom - (load.perPocket * load.set) / 2;
    const top = bottom - along;
    const corners = [
      { x: left, y: top },
      { x: left + across, y: top },
      { x: left + across, y: bottom },
      { x: left, y: bottom },
    ];
    return [{ cover, corners }];
  });
}

/** The outline of a standing item as a look shows it. */
export function contentsMark({ cover, corners }: Standing, look: Look): Mark {
  const back = inverse(cover.lies);
  const outline: PagePoint[] = corners.map((corner) => look.at(cover.index, move(back, corner)));
  return { kind: 'line', line: 'contents', lines: [[...outline, outline[0] ?? { x: 0, y: 0 }]] };
}
