import { locksOf, type Step } from '../creases/fold-program.ts';
import { type Lock, lockPractice } from '../creases/lock.ts';
import { inverse, move, type Point } from '../geometry/plane.ts';
import { boxOf, covers, type FlatFace, flatFaces, TOUCH } from './flat-faces.ts';
import type { Bond } from './glue-bonds.ts';
import type { Gluable } from './glue-faults.ts';
import { fitFault, type Parts } from './lock-fit.ts';
import { platesOf } from './plates.ts';
import { carry, still } from './space.ts';
import { distanceBetween, liesUnder, type Placed, placed } from './strips.ts';

/** What is held together by locks, and what is wrong with them. */
export interface Locking {
  readonly bonds: readonly Bond[];
  readonly faults: readonly string[];
}

/**
 * Where a lock would not go together or not hold: its neck comes to lie in its slot, with room around it, before the
 * tongue is pushed through, afterwards, and when the piece is set up; its shoulders reach beyond the slot's ends; nothing
 * lies between tab and slot, or between slot and tongue; and paper is left around the slot.
 */
export function lockingOf(steps: readonly Step[], sheet: Gluable, caliper: number): Locking {
  const bonds: Bond[] = [];
  const faults: string[] = [];
  const all = locksOf({ steps });
  for (const [index, step] of steps.entries()) {
    const [before, after] = [sheet.forms[index], sheet.forms[index + 1]];
    if (step.kind !== 'lock' || !before || !after) continue;
    const forms = [before, after].map((form) => flatFaces(sheet.pattern, form));
    for (const lock of step.locks) {
      const found = [...forms, sheet.faces].map((faces) => partsOf(lock, faces));
      const [open, pushed, last] = found;
      const fault =
        open && pushed && last
          ? faultOf(lock, { open, pushed, last }, all, sheet, caliper)
          : 'its tab, its tongue or its slot is not there';
      if (fault !== undefined) faults.push(`${step.name}, ${lock.tongue}: ${fault}`);
      if (last) bonds.push(...bondsOf(lock, last));
    }
  }
  return { bonds, faults };
}

function partsOf(lock: Lock, faces: readonly FlatFace[]): Parts | undefined {
  const middle = ({ left, right, top, bottom }: Lock['slot']) => ({
    x: (left + right) / 2,
    y: (top + bottom) / 2,
  });
  const at = (panel: string, point: Point) =>
    faces.find((face) => {
      const there = move(face.lies, point);
      return face.panel === panel && covers(face, there.x, there.y);
    });
  const [p, q] = lock.neck;
  const tab = at(lock.panel, { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 });
  const to = at(lock.to, middle(lock.slot));
  const tongue = faces.filter(({ panel }) => panel === lock.tongue);
  if (!tab || !to || tongue.length === 0) return undefined;
  const neck = [move(tab.lies, p), move(tab.lies, q)] as const;
  return { faces, tab, tongue, to, neck, slot: placed(lock.slot, to) };
}

function faultOf(
  lock: Lock,
  { open, pushed, last }: { readonly open: Parts; readonly pushed: Parts; readonly last: Parts },
  locks: readonly Lock[],
  sheet: Gluable,
  caliper: number,
): string | undefined {
  for (const parts of [open, pushed, last]) {
    const fault = fitFault(parts, caliper);
    if (fault) return fault;
  }
  const between = open.faces.find(
    (face) => liesBetween(face, open.tab, open.to) && liesUnder(open.slot, face),
  );
  if (between) return `${between.panel} lies between it and its slot`;
  for (const { faces, tab, tongue, to, slot } of [pushed, last]) {
    if (tongue.some(({ height }) => height > to.height === tab.height > to.height))
      return `it does not go through ${lock.to}`;
    const own = new Set(tongue.map(({ index }) => index));
    const other = faces.find(
      (face) =>
        !own.has(face.index) &&
        (tongue.some((part) => liesBetween(face, part, to)) || liesBetween(face, tab, to)) &&
        liesUnder(slot, face),
    );
    if (other) return `${other.panel} lies in its way`;
  }
  return webFault(lock, last, locks, sheet) ?? setUpFault(lock, last, sheet);
}

const liesBetween = ({ height }: FlatFace, one: FlatFace, other: FlatFace): boolean =>
  height > Math.min(one.height, other.height) && height < Math.max(one.height, other.height);

/** Whether too little paper is left between a slot and what is next to it in its panel. */
function webFault(
  lock: Lock,
  { to, slot, faces }: Parts,
  locks: readonly Lock[],
  { pattern, neighbours }: Gluable,
): string | undefined {
  const plate = platesOf(neighbours)[to.index] ?? [to.index];
  if (!liesUnder(slot, to) || slot.corners.some(({ x, y }) => !covers(to, x, y)))
    return `its slot does not lie in ${lock.to}`;
  for (const index of plate) {
    const face = faces[index];
    for (const [at, vertex] of (pattern.faces[index]?.vertices ?? []).entries()) {
      const across = neighbours[index]?.find(({ from }) => from === vertex);
      const [p, q] = [face?.corners[at], face?.corners[at + 1] ?? face?.corners[0]];
      if (!p || !q || across?.edge.letter === 'F') continue;
      if (distanceBetween(p, q, slot) < lockPractice.web - TOUCH)
        return `its slot comes too near to ${across ? 'a score' : 'an edge'} of ${lock.to}`;
    }
  }
  const near = locks.find(
    (other) => other !== lock && other.to === lock.to && apart(other, lock) < lockPractice.web - TOUCH,
  );
  return near && `its slot comes too near to the one of ${near.tongue}`;
}

const apart = ({ slot: one }: Lock, { slot: other }: Lock): number =>
  Math.hypot(
    Math.max(one.left - other.right, other.left - one.right, 0),
    Math.max(one.top - other.bottom, other.top - one.bottom, 0),
  );

/** Two layers may stand this far apart, in nanometres, when the piece is set up: rounding. */
const SET_UP = 10;

/** Whether tab and slot come apart when the piece is set up. */
function setUpFault(lock: Lock, { tab, to, neck }: Parts, { motions }: Gluable): string | undefined {
  const far = lock.neck.some((point, index) => {
    const there = neck[index];
    if (!there) return true;
    const one = carry(motions[tab.index] ?? still, { ...point, z: 0 });
    const other = carry(motions[to.index] ?? still, { ...move(inverse(to.lies), there), z: 0 });
    return Math.hypot(one.x - other.x, one.y - other.y, one.z - other.z) > SET_UP;
  });
  return far ? 'it leaves its slot when the piece is set up' : undefined;
}

/** Tab and slotted layer are held on each other, and so are that layer and the tongue, on its other side. */
function bondsOf(lock: Lock, { tab, tongue, to, neck }: Parts): readonly Bond[] {
  const sheetBox = boxOf(lock.neck);
  const box: Placed = { ...boxOf(neck), corners: neck };
  return [tab, ...tongue].map((owner): Bond => {
    const upward = to.height > owner.height;
    const face = upward !== owner.turned ? 'inside' : 'outside';
    return { strip: { panel: owner.panel, face, to: lock.to, ...sheetBox }, owner, other: to, box };
  });
}
