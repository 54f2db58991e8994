import type { Panel } from '../../creases/fold-program.ts';
import type { LockedPaper } from '../../creases/lock.ts';
import { mm, type Nm } from '../../lengths/nanometres.ts';
import { panelOf, rectangle } from '../common/blank.ts';
import { at } from '../common/dimension.ts';
import { leastTongued, type TonguedEdge, tongueLength, tonguePanels } from '../common/lock.ts';
import type { Dimensions } from '../style.ts';
import { D, f, g, H, k, l, W } from './dimensions.ts';

/** How the flaps are shaped; common practice. */
const shape = Object.freeze({
  /** A dust flap stays this far from the back, and from the tuck flap in front of it. */
  dustInset: mm(1),
  dustTaper: mm(2),
  /** Lids are narrower than the box by this at either side, their tuck flaps by as much again, and taper. */
  lidInset: mm(0.5),
  tuckInset: mm(1),
  tuckTaper: mm(4),
  tabInset: mm(1),
  tabTaper: mm(4),
});

/** Where the scores of a box lie on its blank: columns from the left, rows from the top. */
export interface BoxScores {
  /** Left of the left side, the front, the right side and the back, and the back's free edge. */
  readonly columns: readonly [Nm, Nm, Nm, Nm, Nm];
  readonly top: Nm;
  readonly bottom: Nm;
  /** Dust flaps are hinged this far within top and bottom, so that the lids lie over them. */
  readonly nest: Nm;
  readonly height: Nm;
}

export function boxScores(d: Dimensions, caliper: Nm): BoxScores {
  const first = at(d, g);
  const front = first + at(d, D);
  const right = front + at(d, W);
  const back = right + at(d, D);
  const top = at(d, l) + at(d, k);
  const bottom = top + at(d, H);
  return {
    columns: [first, front, right, back, back + at(d, W)],
    top,
    bottom,
    nest: Math.ceil(caliper),
    height: bottom + top,
  };
}

const ends = ['top', 'bottom'] as const;

const tabTop = ({ top, nest }: BoxScores): Nm => top + nest + shape.tabInset;
const tabBottom = ({ bottom, nest }: BoxScores): Nm => bottom - nest - shape.tabInset;

/** The least height of a box whose tab has tongues. */
export const leastTonguedHeight = (paper: LockedPaper): Nm =>
  leastTongued(paper) + 2 * (Math.ceil(paper.caliper) + shape.tabInset + shape.tabTaper);

/** The free edge of a tab that is locked and not glued. */
export const tabEdge = (scores: BoxScores, paper: LockedPaper): TonguedEdge => ({
  panel: 'tab',
  x: tongueLength(paper),
  from: tabTop(scores) + shape.tabTaper,
  to: tabBottom(scores) - shape.tabTaper,
  out: 'left',
  paper,
});

/**
 * The tab, the four walls, and at both ends a lid with its tuck flap and two dust flaps.
 * @param tongued the tab's edge where it has tongues
 */
export function boxPanels(d: Dimensions, scores: BoxScores, tongued: TonguedEdge | undefined): Panel[] {
  const { columns, top, bottom, nest } = scores;
  const [first, front, right, back, end] = columns;
  const wall = (name: string, from: Nm, to: Nm, label = name) =>
    panelOf(name, rectangle(from, top, to, bottom), { label });
  const side = (name: string, from: Nm, to: Nm) =>
    panelOf(name, rectangle(from, top + nest, to, bottom - nest), { label: 'side', labels: 'sides' });
  return [
    panelOf('tab', [
      [first, tabTop(scores)],
      [first, tabBottom(scores)],
      [tongued?.x ?? 0, tabBottom(scores) - shape.tabTaper],
      [tongued?.x ?? 0, tabTop(scores) + shape.tabTaper],
    ]),
    ...(tongued ? tonguePanels(tongued) : []),
    side('left side', first, front),
    wall('front', front, right),
    side('right side', right, back),
    wall('back', back, end),
    ...ends.flatMap((which) => endPanels(which, d, scores)),
  ];
}

/** One end of the box: `top` up the sheet, `bottom` down. */
function endPanels(
  which: 'top' | 'bottom',
  d: Dimensions,
  { columns, top, bottom, nest }: BoxScores,
): Panel[] {
  const [first, , , back, end] = columns;
  const [score, out] = which === 'top' ? [top, -1] : [bottom, 1];
  const [lid, tuck, dust] = [at(d, l), at(d, k), at(d, f)];
  const name = which === 'top' ? 'lid' : 'bottom';
  const base = score - out * nest;
  // how near to the back and how far from it a dust flap may reach, seen from the back
  const [near, far] = [shape.dustInset, lid - shape.dustInset];
  const dustFlap = (side: string, from: Nm, to: Nm) =>
    panelOf(
      `${side} dust flap, ${which}`,
      [
        [from, base],
        [to, base],
        [to - shape.dustTaper, base + out * dust],
        [from + shape.dustTaper, base + out * dust],
      ],
      { label: 'dust flap', labels: 'dust flaps' },
    );
  const [left, wide] = [back + shape.lidInset, end - shape.lidInset];
  const [inner, outer] = [left + shape.tuckInset, wide - shape.tuckInset];
  const hinge = score + out * lid;
  const free = hinge + out * tuck;
  return [
    panelOf(name, rectangle(left, Math.min(score, hinge), wide, Math.max(score, hinge))),
    panelOf(
      `${name} tuck flap`,
      [
        [inner, hinge],
        [outer, hinge],
        [outer - shape.tuckTaper, free],
        [inner + shape.tuckTaper, free],
      ],
      { label: 'tuck flap', labels: 'tuck flaps' },
    ),
    // the left side meets the back at its left score, the right side at its right one
    dustFlap('left', first + near, first + far),
    dustFlap('right', back - far, back - near),
  ];
}
