import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FoldProgram } from '../../shared/creases/fold-program.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { facesAcross } from '../../shared/folding/faces-across.ts';
import { flatFaces } from '../../shared/folding/flat-faces.ts';
import { foldInSteps } from '../../shared/folding/fold-in-steps.ts';
import { jointsOf } from '../../shared/folding/joints.ts';
import { type PocketPlace, pocketIn } from '../../shared/folding/pockets.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { envelope, envelopePocket, foldOver } from '../support/patterns.ts';
import { foldedFrom, sleeves } from '../support/sleeves.ts';

function pocket(program: FoldProgram, place: Partial<PocketPlace> = {}) {
  const pattern = unfold(program);
  const form = foldInSteps(pattern, program).at(-1);
  if (!form) throw new Error('nothing is folded');
  const faces = flatFaces(pattern, form);
  const joints = jointsOf(pattern, facesAcross(pattern), faces);
  return pocketIn({ ...envelopePocket, mouth: 'right', ...place }, joints, faces);
}

/** The pouch without some of its folds. */
const without = (...names: readonly string[]): FoldProgram => ({
  ...envelope(),
  steps: envelope().steps.filter(({ name }) => !names.includes(name)),
});

describe('a pouch of 60 × 40 mm, folded on three sides', () => {
  test('is a pocket with its mouth at the right', () => {
    expect(pocket(envelope())).toMatchObject({ name: 'pouch', width: mm(60), height: mm(40), faults: [] });
  });

  test('is shut where a fold runs along the mouth', () => {
    expect(pocket(envelope(), { mouth: 'left' }).faults).toEqual(['the mouth of the pouch is folded shut']);
  });

  test.each(['top flap', 'bottom flap'])('is open without its %s, and has no height', (flap) => {
    const { faults, height } = pocket(without(flap));
    expect(faults).toContain('the pouch is not closed above and below');
    expect(height).toBe(0);
  });

  test('is open where its flap closes only a part of the width', () => {
    // a fold of 90° parts every panel at x = 70; the strip of the top flap beyond it is a panel of its own
    const bend = { ...foldOver([70, 0, 70, 90], [75, 40], 'bend'), angle: 90 } as const;
    const parted = envelope().panels.flatMap((panel) =>
      panel.right < mm(80)
        ? [panel]
        : [
            { ...panel, right: mm(70) },
            { ...panel, left: mm(70), name: panel.name === 'top flap' ? 'gap' : panel.name },
          ],
    );
    const program = { ...envelope(), panels: parted, steps: [...envelope().steps, bend] };
    expect(pocket(program, { front: [...envelopePocket.front, 'gap'] }).faults).toEqual([]);
    expect(pocket(program).faults).toEqual(['the pouch is not closed above and below']);
  });

  test('needs its front over its back, not beneath it', () => {
    const away = {
      ...envelope(),
      steps: envelope().steps.map((step) => ({ ...step, direction: 'away' as const })),
    };
    expect(pocket(away).faults).toEqual(['the front of the pouch does not lie over its back']);
  });

  test('needs a front at all', () => {
    expect(pocket(envelope(), { front: [] }).faults).toEqual([
      'the front of the pouch does not lie over its back',
      'the pouch is not closed above and below',
    ]);
  });

  test('what lies behind the contents must not lie among the fronts', () => {
    const mixed = pocket(envelope(), {
      behind: ['bottom flap'],
      front: ['top flap', 'left flap', 'top left', 'bottom left'],
    });
    expect(mixed.faults).toContain('the front of the pouch does not lie over its back');
  });
});

test('both pockets of any sleeve are as wide and as high as its panel', () => {
  fc.assert(
    fc.property(sleeves, (raw) => {
      const { plan, proof } = foldedFrom(raw);
      expect(proof.pockets.map(({ name }) => name)).toEqual(['front pocket', 'back pocket']);
      for (const { width, height, faults } of proof.pockets) {
        expect(faults).toEqual([]);
        expect(Math.abs(width - (plan.dimensions['panel.width'] ?? 0))).toBeLessThanOrEqual(1);
        expect(Math.abs(height - (plan.dimensions['panel.height'] ?? 0))).toBeLessThanOrEqual(1);
      }
    }),
    { numRuns: 100, seed: 53 },
  );
});
