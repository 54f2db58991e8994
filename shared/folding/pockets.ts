import { type FlatFace, TOUCH } from './flat-faces.ts';
import type { Bond } from './glue-bonds.ts';
import type { Joint } from './joints.ts';
import { type ClosedSide, closedSidesOf, isLevel, type PaperSide, type PocketPlace } from './pocket-place.ts';

export type { PocketPlace } from './pocket-place.ts';

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What the folded form says of a pocket; lengths in nanometres. */
export interface Pocket {
  readonly name: string;
  /** Clear inside between the folds, before the thickness of paper and contents. */
  readonly width: number;
  readonly height: number;
  /** That inside, where it lies in the flat form. */
  readonly box: Box;
  readonly faults: readonly string[];
}

/** Nothing slides out through a gap beside tabs and glue that is no wider than this; common practice. */
const leastGap = 12_000_000;
/** Tape ends this far beside where the contents may reach; common practice. */
export const besideGlue = 1_000_000;

/** One stretch where front and back hang together, at a place across the side. */
interface End {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Looks for a pocket in the folded form: front and back apart, mouth open, closed at the sides that are said to be. */
export function pocketIn(
  place: PocketPlace,
  joints: readonly Joint[],
  faces: readonly FlatFace[],
  bonds: readonly Bond[] = [],
): Pocket {
  const isBehind = ({ panel }: FlatFace) => panel === place.panel || place.behind.includes(panel);
  const isFront = ({ panel }: FlatFace) => place.front.includes(panel);
  const [behind, fronts] = [faces.filter(isBehind), faces.filter(isFront)];
  const back = boxAround(behind.filter(({ panel }) => panel === place.panel));
  const reach = withinBoth(back, boxAround(fronts));
  const joining = joints.filter(
    ({ one, other }) => (isBehind(one) && isFront(other)) || (isFront(one) && isBehind(other)),
  );
  const ends = closedSidesOf(place).map((closed) => ({
    ...closed,
    at: endOf(closed, place, { back, reach, joining, joints, bonds }),
  }));
  const open = ends.filter(({ at }) => at === undefined).map(({ side }) => side);
  const limit = (side: PaperSide): number => ends.find((end) => end.side === side)?.at ?? back[side];
  const box = { left: limit('left'), right: limit('right'), top: limit('top'), bottom: limit('bottom') };
  const mouth = mouthBetween(place, back, fronts);
  return {
    name: place.name,
    width: open.some((side) => !isLevel(side)) ? 0 : box.right - box.left,
    height: open.some(isLevel) ? 0 : box.bottom - box.top,
    box,
    faults: [
      ...(apart(behind, fronts) ? [] : [`the front of the ${place.name} does not lie over its back`]),
      ...openness(place, open),
      ...(joining.some((joint) => liesAt(joint, place.mouth, mouth))
        ? [`the mouth of the ${place.name} is folded shut`]
        : []),
    ],
  };
}

/** Where a pocket's mouth lies, across its side: where the front ends over the panel behind. */
export const mouthOf = (place: PocketPlace, faces: readonly FlatFace[]): number =>
  mouthBetween(
    place,
    boxAround(faces.filter(({ panel }) => panel === place.panel)),
    faces.filter(({ panel }) => place.front.includes(panel)),
  );

function mouthBetween({ mouth }: PocketPlace, back: Box, fronts: readonly FlatFace[]): number {
  const over = fronts.filter(
    (face) =>
      face.left < back.right - TOUCH &&
      back.left < face.right - TOUCH &&
      face.top < back.bottom - TOUCH &&
      back.top < face.bottom - TOUCH,
  );
  return over.length === 0 ? back[mouth] : withinBoth(back, boxAround(over))[mouth];
}

interface Around {
  readonly back: Box;
  readonly reach: Box;
  readonly joining: readonly Joint[];
  readonly joints: readonly Joint[];
  readonly bonds: readonly Bond[];
}

/** Where a pocket ends at a side; undefined where it is open there. */
function endOf({ side, by }: ClosedSide, place: PocketPlace, around: Around): number | undefined {
  const { back, reach, joining, joints, bonds } = around;
  const [start, end] = isLevel(side) ? [reach.left, reach.right] : [reach.top, reach.bottom];
  const opposite = ({ left: 'right', right: 'left', top: 'bottom', bottom: 'top' } as const)[side];
  const ends =
    by === 'glue'
      ? bonds.filter((bond) => joins(bond, place)).flatMap(({ box }) => endOfStrip(box, side))
      : (by === 'fold' ? joining : joints.filter((joint) => isOfTab(joint, place, bonds))).flatMap((joint) =>
          endOfFold(joint, side),
        );
  const whole = levels(ends)
    .filter((level) => covered(level, start, end, by === 'fold' ? TOUCH : leastGap))
    .map(([first]) => first?.at ?? Number.NaN)
    .filter((at) => Math.abs(at - back[side]) < Math.abs(at - back[opposite]));
  return whole.toSorted((p, q) => Math.abs(p - back[side]) - Math.abs(q - back[side]))[0];
}

/** Whether a strip holds a pocket's front to the panel behind its contents. */
export const joins = ({ owner, other }: Bond, { panel, front }: PocketPlace): boolean =>
  (owner.panel === panel && front.includes(other.panel)) ||
  (front.includes(owner.panel) && other.panel === panel);

/** Whether a fold has a tab on one of its sides which is glued to what is not on the other. */
function isOfTab({ folded, one, other }: Joint, place: PocketPlace, bonds: readonly Bond[]): boolean {
  if (!folded) return false;
  return [[one.panel, other.panel] as const, [other.panel, one.panel] as const].some(([tab, from]) => {
    if (!place.behind.includes(tab)) return false;
    const isBack = from === place.panel;
    if (!isBack && !place.front.includes(from)) return false;
    return bonds.some(
      ({ owner, other: held }) =>
        [owner.panel, held.panel].includes(tab) &&
        [owner.panel, held.panel].some((panel) =>
          isBack ? place.front.includes(panel) : panel === place.panel,
        ),
    );
  });
}

function endOfFold({ from, to }: Joint, side: PaperSide): End[] {
  const [across, along] = isLevel(side) ? (['y', 'x'] as const) : (['x', 'y'] as const);
  if (!near(from[across], to[across])) return [];
  return [
    {
      at: from[across],
      from: Math.min(from[along], to[along]),
      to: Math.max(from[along], to[along]),
    },
  ];
}

/** A strip that runs along a side ends the pocket at its inner edge. */
function endOfStrip({ left, right, top, bottom }: Box, side: PaperSide): End[] {
  const runsLevel = right - left > bottom - top;
  if (runsLevel !== isLevel(side)) return [];
  const inner = { left: right, right: left, top: bottom, bottom: top }[side];
  const at = inner + (side === 'left' || side === 'top' ? besideGlue : -besideGlue);
  return runsLevel ? [{ at, from: left, to: right }] : [{ at, from: top, to: bottom }];
}

function openness({ name, closed }: PocketPlace, open: readonly PaperSide[]): string[] {
  if (open.length === 0) return [];
  if (closed === undefined) return [`the ${name} is not closed above and below`];
  return open.map((side) => `the ${name} is open at its ${side}`);
}

const liesAt = ({ from, to }: Joint, side: PaperSide, at: number): boolean => {
  const across = isLevel(side) ? 'y' : 'x';
  return near(from[across], at) && near(to[across], at);
};

const near = (one: number, other: number): boolean => Math.abs(one - other) <= TOUCH;

/** The smallest upright rectangle around faces. */
function boxAround(faces: readonly FlatFace[]): Box {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const face of faces) {
    if (face.left < left) left = face.left;
    if (face.right > right) right = face.right;
    if (face.top < top) top = face.top;
    if (face.bottom > bottom) bottom = face.bottom;
  }
  return { left, right, top, bottom };
}

/** The part of a box that another covers; the whole of it where the other is empty. */
const withinBoth = (box: Box, { left, right, top, bottom }: Box): Box =>
  left > right
    ? box
    : {
        left: Math.max(box.left, left),
        right: Math.min(box.right, right),
        top: Math.max(box.top, top),
        bottom: Math.min(box.bottom, bottom),
      };

function apart(behind: readonly FlatFace[], front: readonly FlatFace[]): boolean {
  const highest = Math.max(...behind.map(({ height }) => height));
  return front.length > 0 && highest < Math.min(...front.map(({ height }) => height));
}

/** Ends on one line each. */
function levels(ends: readonly End[]): readonly (readonly End[])[] {
  const found: End[][] = [];
  for (const end of ends) {
    const level = found.find(([first]) => first !== undefined && near(first.at, end.at));
    if (level) level.push(end);
    else found.push([end]);
  }
  return found;
}

/** Whether stretches together leave no gap that is wider than so much between two ends. */
function covered(stretches: readonly End[], start: number, end: number, gap: number): boolean {
  let reached = start;
  for (const { from, to } of stretches.toSorted((one, other) => one.from - other.from)) {
    if (from > reached + gap) break;
    reached = Math.max(reached, to);
  }
  return reached >= end - gap;
}
