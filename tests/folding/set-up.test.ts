import { describe, expect, test } from 'vitest';
import type { FoldProgram, Step } from '../../shared/creases/fold-program.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { anglesAfter } from '../../shared/folding/angles.ts';
import { promisedBy, proofOf } from '../../shared/folding/proof-of.ts';
import { type Promised, prove } from '../../shared/folding/prove.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import type { Plan } from '../../shared/solver/plan.ts';
import { styleOf } from '../../shared/styles/registry.ts';
import { solved } from '../support/solved.ts';

/*
 * What is proved of a piece that is set up in space, and of pockets that end in tabs and glue: each check is shown to
 * fail. The pieces are whole ones, spoilt in one way.
 */

const contents = { item: { width: '60 mm', height: '90 mm' }, perPocket: 5, thickness: '2 mm' };
const box = solved({ style: 'tuck-box', contents });
const wrap = solved({ style: 'four-flap-wrap', contents });
const band = solved({ style: 'belly-band', contents });
const folder = solved({ style: 'pocket-folder', contents: { ...contents, perPocket: 1 } });

const programOf = (plan: Plan, dimensions: Readonly<Record<string, number>> = {}): FoldProgram =>
  styleOf(plan.spec).program(
    plan.spec,
    { ...plan.dimensions, ...dimensions },
    plan.arrangement.sheet.paper.caliper,
  );

/** Which checks fail, with what they say. */
function failing(program: FoldProgram, promised: Promised): Readonly<Record<string, string>> {
  const { checks } = prove(unfold(program), program, promised);
  return Object.fromEntries(checks.flatMap(({ name, holds, message }) => (holds ? [] : [[name, message]])));
}

const spoilt = (plan: Plan, change: (steps: readonly Step[]) => readonly Step[]) => {
  const program = programOf(plan);
  return failing({ ...program, steps: change(program.steps) }, promisedBy(plan));
};

test('all of them hold unspoilt', () => {
  for (const plan of [box, wrap, band, folder])
    expect(failing(programOf(plan), promisedBy(plan))).toEqual({});
});

describe('set up in space', () => {
  test('a lid deeper than the box', () => {
    const { depth = 0 } = box.dimensions;
    const found = failing(programOf(box, { lid: depth + mm(2) }), promisedBy(box));
    expect(found.size).toMatch(/finished form/u);
  });

  test('a bottom flap longer than the base passes through the hinge across', () => {
    const { 'panel.height': height = 0 } = wrap.dimensions;
    const found = failing(programOf(wrap, { bottomFlap: height + mm(5) }), promisedBy(wrap));
    expect(found.layers).toMatch(
      /top flap hinge passes through bottom flap|bottom flap passes through top flap hinge/u,
    );
  });

  test('dust flaps that lie on each other in one plane', () => {
    const { 'panel.width': width = 0 } = box.dimensions;
    const found = failing(programOf(box, { dustFlap: width * 0.8 }), promisedBy(box));
    expect(found.spine).toMatch(/dust flap/u);
  });

  test('a tuck flap without room for the front’s paper', () => {
    const { depth = 0 } = box.dimensions;
    const found = failing(programOf(box, { lid: depth - 1000 }), promisedBy(box));
    expect(found.spine).toMatch(/tuck flap/u);
  });

  test('flaps in one plane that lie over each other', () => {
    const { hinge = 0 } = wrap.dimensions;
    const found = failing(programOf(wrap, { bottomHinge: hinge }), promisedBy(wrap));
    expect(found.spine).toMatch(/2 layers take/u);
  });

  test('a hinge too low for the contents', () => {
    const found = failing(programOf(wrap, { hinge: mm(8) }), promisedBy(wrap));
    expect(found.spine).toMatch(/and the contents/u);
    expect(found.pockets).toMatch(/left flap reaches into the wrap|right flap reaches into the wrap/u);
  });

  test('a flap that is never closed leaves the contents open', () => {
    const found = spoilt(wrap, (steps) => steps.filter(({ name }) => name !== 'close the top'));
    expect(found.pockets).toMatch(/no paper stands above the wrap/u);
    expect(found.size).toMatch(/finished form/u);
  });

  test('a band that is opened at one of its flattened folds alone tears its seam', () => {
    const found = spoilt(band, (steps) =>
      steps.map((step) =>
        step.kind === 'stand' ? { ...step, folds: step.folds.filter((fold) => fold !== 'right end') } : step,
      ),
    );
    expect(found.glue).toMatch(/when the piece is set up/u);
  });

  test('a closed size other than promised', () => {
    const promised = promisedBy(band);
    if (!promised.closed) throw new Error('a band around a thick stack stands');
    const wrong = { ...promised, closed: { ...promised.closed, depth: promised.closed.depth + mm(1) } };
    expect(Object.keys(failing(programOf(band), wrong))).toEqual(['size']);
  });

  test('creases are bent when their steps have come, and eased ones only when they are set up', () => {
    const { program, pattern } = proofOf(box);
    const edgeOf = (name: string) => {
      const edge = pattern.edges.find(({ step }) => program.steps[step ?? -1]?.name === name);
      if (!edge) throw new Error(`nothing is creased by ${name}`);
      return edge;
    };
    const doing = (name: string) => program.steps.findIndex((step) => step.name === name) + 1;
    const angle = (name: string, count: number) => Math.abs(anglesAfter(program, count)(edgeOf(name)));
    expect(angle('lid', doing('lid'))).toBe(0);
    expect(angle('lid', doing('close the lid'))).toBe(90);
    expect(angle('back', doing('back') - 1)).toBe(0);
    expect(angle('back', doing('back'))).toBe(180);
    expect(angle('back', doing('set up the tube'))).toBe(90);
  });
});

describe('a pocket that ends in a tab and in glue', () => {
  test('is open where neither is glued', () => {
    const found = spoilt(folder, (steps) => steps.filter(({ kind }) => kind !== 'glue'));
    expect(found.pockets).toMatch(/front pocket is open at its left/u);
    expect(found.pockets).toMatch(/front pocket is open at its right/u);
  });

  test('is open at the tab if only the other end is glued', () => {
    const found = spoilt(folder, (steps) =>
      steps.map((step) =>
        step.kind === 'glue'
          ? { ...step, strips: step.strips.filter(({ panel }) => panel !== 'front pocket tab') }
          : step,
      ),
    );
    expect(found.pockets).toBe('the front pocket is open at its left');
  });

  test('is shut by a strip in its middle', () => {
    const found = spoilt(folder, (steps) =>
      steps.map((step) => {
        if (step.kind !== 'glue') return step;
        const [strip] = step.strips.filter(({ panel }) => panel === 'front pocket');
        if (!strip) throw new Error('the front pocket is not glued');
        const moved = { ...strip, left: strip.left - mm(30), right: strip.right - mm(30) };
        return { ...step, strips: [...step.strips, moved] };
      }),
    );
    expect(found.glue).toMatch(/glues the front pocket shut/u);
  });
});
