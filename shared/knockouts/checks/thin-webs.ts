import { boundsOf, centreOf, contourBounds, overlap } from '../../geometry/bounds.ts';
import { thinParts } from '../../geometry/clip/thin-parts.ts';
import type { Shape } from '../../geometry/contour.ts';
import { flatten, flattenShape } from '../../geometry/flatten.ts';
import { mm } from '../../lengths/nanometres.ts';
import { grownBounds } from '../bounds.ts';
import { comeWithin, gapBetween } from './distances.ts';
import { type Checked, type Finding, shownPlaces, titlesIn } from './finding.ts';
import { isStrip, slenderness, widthAtNeck } from './narrowness.ts';

/** A web begins this near to the opening beside it, in nanometres: offsets are polygons. */
const BESIDE = mm(0.1);

/** Of several webs between the same knockouts this many are measured, those with the smallest bounds. */
const MEASURED = 3;

/** Webs a little wider than a good one are looked for too: of one that just lacks, an opening loses next to nothing. */
const LOOKED_FOR = 1.1;

/** Wider webs than this many times a good one bear their length; common practice. */
const SLENDER_AT_MOST = 3;

/** Between more openings than this the paper is a net, and hardly a strip; looking for one would take long. */
const MOST_FOR_STRIPS = 100;

interface Web {
  readonly outline: Shape;
  readonly beside: readonly number[];
}

/** Paper between two cuts that is too narrow, or too slender for what it has to hold. */
export function thinWebs(checked: Checked): readonly Finding[] {
  const { paper, limits } = checked;
  const narrow = websIn(paper.shape, LOOKED_FOR * limits.goodWeb, checked);
  const thin = [...groupsOf(narrow).values()]
    .map((webs) => ({ webs, finding: thinFinding(webs, checked) }))
    // measured, some are as wide as they should be
    .filter(({ finding }) => (finding.size ?? 0) < limits.goodWeb);
  const known = thin.flatMap(({ webs }) => webs);
  const slender: Web[] = [];
  const isNet = paper.shape.length > MOST_FOR_STRIPS;
  for (const web of isNet ? [] : websIn(paper.shape, SLENDER_AT_MOST * limits.goodWeb, checked)) {
    const isKnown = known.some(({ outline }) => meet(outline, web.outline));
    if (!isKnown && isStrip(web.outline) && slenderness(web.outline) > limits.slenderest) slender.push(web);
  }
  return [
    ...thin.map(({ finding }) => finding),
    ...[...groupsOf(slender).values()].map((webs) => slenderFinding(webs, checked)),
  ];
}

const meet = (one: Shape, other: Shape): boolean => overlap(boundsOf(one), boundsOf(other));

function websIn(paper: Shape, width: number, { list }: Checked): readonly Web[] {
  return thinParts(paper, width).flatMap(({ kind, outline }) => {
    if (kind !== 'neck') return [];
    const beside = list.filter(({ onBlank }) => isNear(onBlank, outline)).map(({ index }) => index);
    return beside.length === 0 ? [] : [{ outline, beside }];
  });
}

/** Whether a figure's edge runs along a web's. */
function isNear(figure: Shape, web: Shape): boolean {
  const box = grownBounds(boundsOf(web), BESIDE);
  const near = figure.filter((contour) => overlap(boundsOf([contour]), box));
  return near.length > 0 && comeWithin(flattenShape(near), flattenShape(web), BESIDE);
}

function groupsOf(webs: readonly Web[]): ReadonlyMap<string, readonly Web[]> {
  const groups = new Map<string, Web[]>();
  for (const web of webs) {
    const key = web.beside.join();
    groups.set(key, [...(groups.get(key) ?? []), web]);
  }
  return groups;
}

const sizeOf = ({ outline }: Web): number => {
  const { left, top, right, bottom } = boundsOf(outline);
  return Math.hypot(right - left, bottom - top);
};

const placesOf = (webs: readonly Web[]) =>
  shownPlaces(webs.map(({ outline }) => centreOf(boundsOf(outline))));

/** Between the two contours that a web parts; a contour that comes near to itself is searched for its width. */
function widthOf(web: Shape, paper: Shape, most: number): number {
  const around = grownBounds(boundsOf(web), BESIDE);
  const near = paper
    .map((contour) => ({ contour, bounds: contourBounds(contour) }))
    .filter(({ bounds }) => overlap(bounds, around))
    .map((each) => ({ ...each, corners: flatten(each.contour), reach: grownBounds(each.bounds, most) }));
  let least = Infinity;
  for (const [at, one] of near.entries()) {
    for (const other of near.slice(at + 1))
      if (overlap(one.reach, other.bounds))
        least = Math.min(least, gapBetween([one.corners], [other.corners]).distance);
  }
  return least < most ? least : widthAtNeck(paper, web, most);
}

function thinFinding(webs: readonly Web[], { list, paper, limits, say }: Checked): Finding {
  const ordered = webs.toSorted((one, other) => sizeOf(one) - sizeOf(other));
  const widths = ordered
    .slice(0, MEASURED)
    .map(({ outline }) => widthOf(outline, paper.shape, LOOKED_FOR * limits.goodWeb));
  const size = Math.round(Math.min(...widths) / 1e4) * 1e4;
  const does = size < limits.leastWeb ? 'refuse' : 'tell';
  const limit = does === 'refuse' ? limits.leastWeb : limits.goodWeb;
  const knockouts = webs[0]?.beside ?? [];
  const where =
    knockouts.length > 1 ? `between ${titlesIn(list, knockouts)}` : `beside ${titlesIn(list, knockouts)}`;
  const many = webs.length > 1 ? ` in ${webs.length} places` : '';
  return {
    code: 'web-thin',
    does,
    knockouts,
    message: `${where} only ${say(size)} of paper is left${many}: less than ${say(limit)} tears`,
    remedy: 'move them apart, make them smaller, or set knockoutLimits if your paper and tool bear it',
    brief: `web of ${say(size)}`,
    size,
    limit,
    at: placesOf(ordered),
  };
}

function slenderFinding(webs: readonly Web[], { list, limits }: Checked): Finding {
  const knockouts = webs[0]?.beside ?? [];
  const worst = Math.round(Math.max(...webs.map(({ outline }) => slenderness(outline))));
  return {
    code: 'web-slender',
    does: 'tell',
    knockouts,
    message: `a strip of paper beside ${titlesIn(list, knockouts)} is ${worst} times as long as it is wide: more than ${limits.slenderest} times bends and catches`,
    remedy: 'make it wider, or leave a bridge across the opening',
    brief: `slender strip, 1 : ${worst}`,
    at: placesOf(webs),
  };
}
