import { type FlatFace, TOUCH } from './flat-faces.ts';
import type { Joint } from './joints.ts';

/** Where a style keeps things: the contents go between the panels behind and the panels in front. */
export interface PocketPlace {
  readonly name: string;
  /** The panel behind the contents, whose folded width is the pocket's. */
  readonly panel: string;
  /** Panels that lie behind the contents besides that one. */
  readonly behind: readonly string[];
  readonly front: readonly string[];
  /** The side of the flat form at which the contents slide in. */
  readonly mouth: 'left' | 'right';
}

/** What the folded form says of a pocket; lengths in nanometres. */
export interface Pocket {
  readonly name: string;
  /** Clear inside between the folds, before the thickness of paper and contents. */
  readonly width: number;
  readonly height: number;
  readonly faults: readonly string[];
}

/** Looks for a pocket in the folded form: front and back apart, mouth open, closed above and below. */
export function pocketIn(place: PocketPlace, joints: readonly Joint[], faces: readonly FlatFace[]): Pocket {
  const isBehind = ({ panel }: FlatFace) => panel === place.panel || place.behind.includes(panel);
  const isFront = ({ panel }: FlatFace) => place.front.includes(panel);
  const cover = faces.filter(({ panel }) => panel === place.panel);
  const left = Math.min(...cover.map((face) => face.left));
  const right = Math.max(...cover.map((face) => face.right));
  const joining = joints.filter(
    ({ one, other }) => (isBehind(one) && isFront(other)) || (isFront(one) && isBehind(other)),
  );
  const closed = levels(joining).filter(({ spans }) => covered(spans, left, right));
  const [top, bottom] = [closed[0]?.y, closed.at(-1)?.y];
  const mouth = place.mouth === 'left' ? left : right;
  const open = closed.length < 2 || top === undefined || bottom === undefined;
  return {
    name: place.name,
    width: right - left,
    height: open ? 0 : bottom - top,
    faults: [
      ...(apart(faces.filter(isBehind), faces.filter(isFront))
        ? []
        : [`the front of the ${place.name} does not lie over its back`]),
      ...(open ? [`the ${place.name} is not closed above and below`] : []),
      ...(joining.some(({ from, to }) => near(from.x, mouth) && near(to.x, mouth))
        ? [`the mouth of the ${place.name} is folded shut`]
        : []),
    ],
  };
}

const near = (one: number, other: number): boolean => Math.abs(one - other) <= TOUCH;

function apart(behind: readonly FlatFace[], front: readonly FlatFace[]): boolean {
  const highest = Math.max(...behind.map(({ height }) => height));
  return front.length > 0 && highest < Math.min(...front.map(({ height }) => height));
}

type Span = readonly [number, number];

/** The level folds among joints, from the top down, each with the stretches that it closes. */
function levels(
  joints: readonly Joint[],
): readonly { readonly y: number; readonly spans: readonly Span[] }[] {
  const found: { y: number; spans: Span[] }[] = [];
  for (const { from, to } of joints) {
    if (!near(from.y, to.y)) continue;
    const span: Span = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
    const level = found.find(({ y }) => near(y, from.y));
    if (level) level.spans.push(span);
    else found.push({ y: from.y, spans: [span] });
  }
  return found.toSorted((one, other) => one.y - other.y);
}

/** Whether spans together leave no gap between two ends. */
function covered(spans: readonly Span[], left: number, right: number): boolean {
  let reached = left;
  for (const [start, end] of spans.toSorted((one, other) => one[0] - other[0])) {
    if (start > reached + TOUCH) break;
    reached = Math.max(reached, end);
  }
  return reached >= right - TOUCH;
}
