import { describe, expect, test } from 'vitest';
import type { FoldProgram, LockStep, Step } from '../../shared/creases/fold-program.ts';
import type { Lock, Slot } from '../../shared/creases/lock.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { type Folded, promisedBy, proofOf } from '../../shared/folding/proof-of.ts';
import { prove } from '../../shared/folding/prove.ts';
import type { Point } from '../../shared/geometry/plane.ts';
import { programOn } from '../../shared/styles/common/blank.ts';
import { styleOf } from '../../shared/styles/registry.ts';
import { solved } from '../support/solved.ts';

/** Locked pieces on which the proof of locks is tried; lengths in nanometres. */
const pieces = {
  folder: { style: 'pocket-folder', join: 'slots', contents: { item: { size: 'iso-a6' }, perPocket: 2 } },
  wallet: { style: 'gate-wallet', join: 'slots', contents: { item: { size: 'iso-a6' }, perPocket: 4 } },
  box: { style: 'tuck-box', join: 'slots', contents: { item: { size: 'iso-a6' }, perPocket: 20 } },
} as const;

const foldedFrom = (raw: object): Folded => proofOf(solved(raw));
const isLock = (step: Step): step is LockStep => step.kind === 'lock';

/** What the proof finds once a program is changed. */
function found(folded: Folded, change: (program: FoldProgram) => FoldProgram): string {
  const program = change(folded.program);
  const { checks } = prove(unfold(program), program, promisedBy(folded.plan));
  return checks.flatMap(({ name, holds, message }) => (holds ? [] : [`${name}: ${message}`])).join('; ');
}

const withSteps = (change: (step: Step) => readonly Step[]) => (program: FoldProgram) => ({
  ...program,
  steps: program.steps.flatMap(change),
});
const withLocks = (change: (lock: Lock) => Lock) =>
  withSteps((step) => [isLock(step) ? { ...step, locks: step.locks.map(change) } : step]);
/** With the shoulders of every tongue nearer to its tab by a length, or further from it. */
const withNecks = (longer: number) => (program: FoldProgram) => {
  const locks = program.steps.filter(isLock).flatMap((step) => step.locks);
  const panels = program.panels.map((panel) => {
    const x = locks.find(({ tongue }) => tongue === panel.name)?.neck[0].x;
    if (x === undefined) return panel;
    const away = (point: Point): Point =>
      point.x === x ? point : { ...point, x: point.x + Math.sign(point.x - x) * longer };
    return { ...panel, pieces: panel.pieces?.map((piece) => piece.map(away)) ?? [] };
  });
  return programOn(panels, program.steps);
};
const withSlots = (change: (slot: Slot) => Slot) =>
  withLocks((lock) => ({ ...lock, slot: change(lock.slot) }));

describe.each(Object.entries(pieces))('the locks of a %s', (_, raw) => {
  const folded = foldedFrom(raw);

  test('hold, and are not proved where there are none', () => {
    expect(found(folded, (program) => program)).toBe('');
    expect(folded.proof.checks.map(({ name }) => name)).toContain('locks');
    expect(foldedFrom({ ...raw, join: 'glue' }).proof.checks.map(({ name }) => name)).not.toContain('locks');
  });

  test.each<[string, (slot: Slot) => Slot, RegExp]>([
    [
      'beside its neck',
      (slot) => ({ ...slot, left: slot.left + 1_500_000, right: slot.right + 1_500_000 }),
      /does not lie in its slot/u,
    ],
    ['narrower', (slot) => ({ ...slot, right: slot.right - 300_000 }), /does not lie in its slot/u],
    ['shorter', (slot) => ({ ...slot, top: slot.top + 1_000_000 }), /no room in the length/u],
    [
      'off along the neck',
      (slot) => ({ ...slot, top: slot.top - 9e5, bottom: slot.bottom - 9e5 }),
      /no room in/u,
    ],
    [
      'longer than the tongue',
      (slot) => ({ ...slot, top: slot.top - 2_500_000, bottom: slot.bottom + 2_500_000 }),
      /slip back/u,
    ],
    ['elsewhere', (slot) => ({ ...slot, left: slot.left - 1e9, right: slot.right - 1e9 }), /is not there/u],
  ])('do not with a slot that is %s', (__, change, message) => {
    expect(found(folded, withSlots(change))).toMatch(message);
  });

  test.each([
    ['too short for the shoulders to come through', -1_300_000, /do not come through/u],
    ['so long that the tab is loose', 2_000_000, /loose in the slot/u],
  ])('do not with a neck that is %s', (__, longer, message) => {
    expect(found(folded, withNecks(0))).toBe('');
    expect(found(folded, withNecks(longer))).toMatch(message);
  });

  test.each(['1 mm', '1.5 mm', '2 mm'])('have necks that are long enough in paper of %s', (caliper) => {
    // half of a slot three calipers wide, the paper, and 0.5 mm
    const least = 2.5 * Number.parseFloat(caliper) + 0.5;
    const thick = foldedFrom({ ...raw, stock: { width: '900 mm', height: '900 mm', caliper } });
    expect(thick.proof.holds).toBe(true);
    for (const { tongue, neck } of thick.program.steps.filter(isLock).flatMap(({ locks }) => locks)) {
      const panel = thick.program.panels.find(({ name }) => name === tongue);
      const reach = (panel?.pieces?.[0] ?? []).map(({ x }) => Math.abs(x - neck[0].x));
      expect(Math.max(...reach) / 1e6).toBeCloseTo(least, 5);
    }
  });

  test('do not in thicker paper', () => {
    const { plan, pattern, program } = folded;
    const promised = { ...promisedBy(plan), caliper: 800_000 };
    const failing = prove(pattern, program, promised).checks.filter(({ holds }) => !holds);
    expect(failing.map(({ name }) => name)).toContain('locks');
  });

  test('do not where a tongue is slipped past its layer without a slot', () => {
    const tucks = (step: Step): readonly Step[] =>
      isLock(step)
        ? step.locks.map(({ tongue, panel, to }) => ({
            kind: 'tuck',
            name: step.name,
            panel: tongue,
            to: isAbove(folded, panel, to) ? 'below' : 'above',
            of: to,
          }))
        : [step];
    expect(found(folded, withSteps(tucks))).toMatch(/layers: .* run on into each other/u);
  });

  test('do not when they are made before the piece is folded', () => {
    const early = (program: FoldProgram) => {
      const lock = program.steps.filter(isLock);
      return { ...program, steps: [...lock, ...program.steps.filter((step) => !isLock(step))] };
    };
    expect(found(folded, early)).toMatch(/locks: /u);
  });

  test('do not where their slots come too near to an edge', () => {
    const { plan } = folded;
    const name = 'tab';
    const dimensions = { ...plan.dimensions, [name]: (plan.dimensions[name] ?? 0) - 2_000_000 };
    const program = styleOf(plan.spec).program(plan.spec, dimensions, plan.arrangement.sheet.paper.caliper);
    expect(found(folded, () => program)).toMatch(/slot comes too near to (?:an edge|a score)/u);
  });
});

const isAbove = ({ proof }: Folded, panel: string, other: string): boolean => {
  const heightOf = (name: string) => proof.faces.find((face) => face.panel === name)?.height ?? Number.NaN;
  return heightOf(panel) > heightOf(other);
};

test('slots keep their distance, also from those of another step', () => {
  const locks = foldedFrom(pieces.folder)
    .program.steps.filter(isLock)
    .flatMap((step) => step.locks);
  const [one, other] = locks.filter(({ to }) => to === 'front');
  if (!one || !other) throw new Error('a cover has two slots');
  // 5 mm of paper beside the first slot, which stays as it is
  const by = one.slot.right + 5_000_000 - other.slot.left;
  const { left, right } = other.slot;
  const moved: Lock = {
    ...other,
    slot: { ...other.slot, top: one.slot.top, bottom: one.slot.bottom, left: left + by, right: right + by },
  };
  const changed = (split: boolean) =>
    withSteps((step) =>
      isLock(step)
        ? split
          ? [
              { ...step, locks: [one] },
              { ...step, name: 'lock the rest', locks: [moved] },
            ]
          : [{ ...step, locks: [one, moved] }]
        : [step],
    );
  for (const split of [false, true])
    expect(found(foldedFrom(pieces.folder), changed(split))).toContain(
      `${one.tongue}: its slot comes too near to the one of ${other.tongue}`,
    );
});

test('pockets are open where their locks are left out', () => {
  const folded = foldedFrom(pieces.folder);
  expect(
    found(
      folded,
      withSteps((step) => (isLock(step) ? [] : [step])),
    ),
  ).toMatch(/pockets: the front pocket is open/u);
});
