import { boxOf, type FlatFace, TOUCH } from '../folding/flat-faces.ts';
import { closedSidesOf } from '../folding/pocket-place.ts';
import type { Folded } from '../folding/proof-of.ts';
import { inverse, move, type Point } from '../geometry/plane.ts';
import { pocketsOf } from '../styles/pockets-of.ts';
import type { Look } from './painted.ts';
import type { Mark, PagePoint } from './picture.ts';

/** An item as it stands in one pocket: its outline on the flat form, and the panel behind it. */
export interface Standing {
  readonly cover: FlatFace;
  readonly corners: readonly Point[];
  /** It is seen from both sides, since it reaches beyond the panel above or below. */
  readonly sticksOut: boolean;
  /** It can be in the piece while that lies flat: not in a tube that lies flattened. */
  readonly inFlat: boolean;
}

/**
 * The items in each pocket at their true size, midway between its sides; where the pocket goes in from above or below,
 * or ends below, at its end. A fold below goes round them, so that they stand above it by half of what they are thick.
 */
export function contentsIn({ plan, proof }: Folded): readonly Standing[] {
  const { load, arrangement } = plan;
  if (!load) return [];
  const { width, height } = load.item;
  const [across, along] = arrangement.itemTurned ? [height, width] : [width, height];
  return pocketsOf(plan).flatMap((place) => {
    const covers = proof.faces.filter((face) => face.panel === place.panel);
    const [cover] = covers;
    const box = proof.pockets.find(({ name }) => name === place.name)?.box;
    if (!cover || !box) return [];
    const left = (box.left + box.right - across) / 2;
    const ends = place.walls === undefined && closedSidesOf(place).some(({ side }) => side === 'bottom');
    const bottom = !ends ? (box.top + box.bottom + along) / 2 : box.bottom - (load.perPocket * load.set) / 2;
    const top = bottom - along;
    const corners = [
      { x: left, y: top },
      { x: left + across, y: top },
      { x: left + across, y: bottom },
      { x: left, y: bottom },
    ];
    const panel = boxOf(covers.flatMap((face) => face.corners));
    const sticksOut = top < panel.top || bottom > panel.bottom;
    const inFlat = place.walls === undefined || isOpen(cover, panel, proof.faces);
    return [{ cover, corners, sticksOut, inFlat }];
  });
}

/** Whether a panel's inside is seen, and nothing lies over it. */
const isOpen = (
  { height, turned }: FlatFace,
  panel: ReturnType<typeof boxOf>,
  faces: readonly FlatFace[],
): boolean =>
  !turned &&
  !faces.some(
    (face) =>
      face.height > height &&
      face.left < panel.right - TOUCH &&
      panel.left < face.right - TOUCH &&
      face.top < panel.bottom - TOUCH &&
      panel.top < face.bottom - TOUCH,
  );

/** The outline of a standing item as a look shows it. */
export function contentsMark({ cover, corners }: Standing, look: Look): Mark {
  const back = inverse(cover.lies);
  const outline: PagePoint[] = corners.map((corner) => look.at(cover.index, move(back, corner)));
  return { kind: 'line', line: 'contents', lines: [[...outline, outline[0] ?? { x: 0, y: 0 }]] };
}
