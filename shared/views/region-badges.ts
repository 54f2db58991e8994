import { isPrintKnown } from '../folding/print-shown.ts';
import type { Folded } from '../folding/proof-of.ts';
import { type Convex, depthIn, reachIn } from './convex.ts';
import { labelOf, namesIn, type PanelNames } from './part-names.ts';
import type { ArrowMark, Mark, PagePoint, TextMark } from './picture.ts';
import { roomiest, type Space } from './roomiest.ts';
import { plateOf, textSize } from './text-block.ts';
import type { VisibleRegion } from './visible.ts';

const longestArrow = 10;
/** A label makes room only for an arrow that is at least this long. */
const shortestBesideLabel = 4;
/** A region with less room than this around its middle, in millimetres, is too small for an arrow. */
const leastDepth = 1.2;
/** An arrow's width, as a share of its length. */
const arrowWidth = 0.38;
/** Between an arrow and its label. */
const gap = 0.7;
/** Between a label's plate and the region's edge. */
const margin = 0.1;

/** On each region an arrow where its print's up points, if that is known, and its name where there is room. */
export function regionBadges(regions: readonly VisibleRegion[], folded: Folded): readonly Mark[] {
  const names = namesIn(folded);
  const { sheet } = folded.plan.arrangement;
  return regions.flatMap((region) => {
    const space = roomiest(region.pieces);
    if (!space || space.depth < leastDepth) return [];
    const marks = badge(region, space, names);
    return isPrintKnown(sheet, region.paper) ? marks : marks.filter(({ kind }) => kind !== 'arrow');
  });
}

function badge({ part, paper, corner, up }: VisibleRegion, space: Space, names: PanelNames): readonly Mark[] {
  const longest = longestIn(space, up);
  const text = labelOf(names, part, corner).one;
  for (const length of [longest, longest * 0.8, longest * 0.6].filter(
    (each) => each >= shortestBesideLabel,
  )) {
    const label = labelBeside(text, up, space, length);
    if (label) return [{ ...arrowAt(label.middle, up, length), part, paper }, label.mark];
  }
  return [{ ...arrowAt(space.centre, up, longest), part, paper }];
}

function arrowAt(middle: PagePoint, up: PagePoint, length: number): ArrowMark {
  const half = length / 2 / Math.hypot(up.x, up.y);
  return {
    kind: 'arrow',
    arrow: 'print',
    from: { x: middle.x - up.x * half, y: middle.y - up.y * half },
    to: { x: middle.x + up.x * half, y: middle.y + up.y * half },
  };
}

/** As long as the region allows, and not so long that its width would not fit. */
function longestIn({ piece, centre }: Space, up: PagePoint): number {
  const size = Math.hypot(up.x, up.y);
  const along = reachIn(piece, centre, up) * size;
  const across = reachIn(piece, centre, { x: -up.y, y: up.x }) * size;
  return Math.min(longestArrow, 1.5 * along, (1.6 * across) / arrowWidth);
}

/** A label below the arrow, level or written upward, with both around the middle of their space; none if it does not fit. */
function labelBeside(
  text: string,
  up: PagePoint,
  { piece, centre }: Space,
  length: number,
): { readonly mark: TextMark; readonly middle: PagePoint } | undefined {
  const size = textSize.label;
  const plate = plateOf(text, size);
  const share = Math.abs(up.y) / Math.hypot(up.x, up.y);
  const tall = length * Math.max(share, arrowWidth);
  for (const upward of [false, true]) {
    const [wide, high] = upward ? [plate.height, plate.width] : [plate.width, plate.height];
    const whole = tall + gap + high;
    const at = { x: centre.x, y: centre.y + whole / 2 - high / 2 };
    if (whole / 2 + margin > reachIn(piece, centre, { x: 0, y: 1 }) || !holds(piece, at, wide, high))
      continue;
    return {
      mark: { kind: 'text', text, at, size, anchor: 'middle', plate: true, ...(upward ? { upward } : {}) },
      middle: { x: centre.x, y: centre.y - whole / 2 + tall / 2 },
    };
  }
  return undefined;
}

function holds(piece: Convex, { x, y }: PagePoint, width: number, height: number): boolean {
  const [right, down] = [width / 2, height / 2];
  return [-1, 1].every((across) =>
    [-1, 1].every((along) => depthIn(piece, { x: x + across * right, y: y + along * down }) >= margin),
  );
}
