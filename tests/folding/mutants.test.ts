import { describe, expect, test } from 'vitest';
import type { CreasePattern, Edge } from '../../shared/creases/crease-pattern.ts';
import type { FoldProgram, Step } from '../../shared/creases/fold-program.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { promisedBy } from '../../shared/folding/proof-of.ts';
import { type Promised, prove } from '../../shared/folding/prove.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { styleOf } from '../../shared/styles/registry.ts';
import { envelope, envelopePocket } from '../support/patterns.ts';
import { sleeveSpec } from '../support/sleeve-spec.ts';
import { everyKind, foldedFrom } from '../support/sleeves.ts';

/*
 * Each sleeve is spoilt in one way at a time; the proof must notice. What it says of a sound one is tested too.
 */

/** Names of the checks that fail; a program that cannot even be carried out counts as found. */
function foundBy(prover: () => ReturnType<typeof prove>): readonly string[] {
  try {
    return prover().checks.flatMap(({ name, holds }) => (holds ? [] : [name]));
  } catch (error) {
    return [`refused: ${error instanceof Error ? error.message : error}`];
  }
}

/** Nothing in it, and usual paper. */
const empty = { stack: 0, caliper: mm(0.3) };

const kinds = everyKind.map((raw) => {
  const { plan, pattern, program } = foldedFrom(raw);
  const style = styleOf(plan.spec);
  const promised = promisedBy(plan);
  const { corners, hem, seam } = sleeveSpec(plan);
  return {
    name: `corners ${corners}, hems ${hem?.turn}, seam ${seam}`,
    corners,
    pattern,
    program,
    withPattern: (mutant: CreasePattern) => foundBy(() => prove(mutant, program, promised)),
    /** The given pattern with other steps. */
    withSteps: (steps: readonly Step[]) => foundBy(() => prove(pattern, { ...program, steps }, promised)),
    /** Another program, with the pattern that it makes itself. */
    withProgram: (mutant: FoldProgram) => foundBy(() => prove(unfold(mutant), mutant, promised)),
    withDimensions: (dimensions: Readonly<Record<string, number>>) => {
      const { caliper } = plan.arrangement.sheet.paper;
      const mutant = style.program(plan.spec, { ...plan.dimensions, ...dimensions }, caliper);
      return foundBy(() => prove(unfold(mutant), mutant, promised));
    },
    promising: (other: Partial<Promised>) =>
      foundBy(() => prove(pattern, program, { ...promised, ...other })),
  };
});

const flipped = (edge: Edge): Edge => ({
  ...edge,
  letter: edge.letter === 'V' ? 'M' : 'V',
  foldAngle: -edge.foldAngle,
});

describe.each(kinds)('$name', (kind) => {
  const { pattern, program } = kind;
  const edgesWhere = (change: (edge: Edge, index: number) => Edge): CreasePattern => ({
    ...pattern,
    edges: pattern.edges.map(change),
  });
  const creases = pattern.edges.flatMap(({ letter }, index) => (letter === 'B' ? [] : [index]));
  const folds = program.steps.flatMap((step, index) => (step.kind === 'fold' ? [index] : []));

  test('passes unspoilt', () => {
    expect(kind.withPattern(pattern)).toEqual([]);
    expect(kind.withProgram(program)).toEqual([]);
  });

  test('any one letter flipped', () => {
    for (const crease of creases) {
      const mutant = edgesWhere((edge, index) => (index === crease ? flipped(edge) : edge));
      // twice: against the steps, and without them by what the folded form itself shows
      const found = kind.withPattern(mutant);
      expect(found, `crease ${crease}`).toContain('steps');
      expect(found.length, `crease ${crease}`).toBeGreaterThan(1);
    }
  });

  test('all letters of one fold flipped, the spine bent backward among them', () => {
    for (const fold of folds) {
      const found = kind.withPattern(edgesWhere((edge) => (edge.step === fold ? flipped(edge) : edge)));
      expect(found, program.steps[fold]?.name).toContain('steps');
    }
  });

  test('a letter that does not match its angle', () => {
    for (const crease of creases) {
      const mutant = edgesWhere((edge, index) =>
        index === crease ? { ...edge, foldAngle: -edge.foldAngle } : edge,
      );
      expect(kind.withPattern(mutant), `crease ${crease}`).not.toEqual([]);
    }
  });

  test('any one crease folded by another angle', () => {
    for (const crease of creases) {
      for (const share of [0, 0.25, 0.5]) {
        const mutant = edgesWhere((edge, index) =>
          index === crease ? { ...edge, foldAngle: edge.foldAngle * share } : edge,
        );
        expect(kind.withPattern(mutant), `crease ${crease} × ${share}`).toEqual(
          expect.arrayContaining(['steps', 'closure']),
        );
      }
    }
  });

  test('a fold of 180° that stays at 90°', () => {
    for (const fold of folds) {
      const steps = program.steps.map((step, index) =>
        index === fold && step.kind === 'fold' ? { ...step, angle: 90 as const } : step,
      );
      const before = program.steps[fold];
      if (before?.kind !== 'fold' || before.angle === 90) continue;
      expect(kind.withSteps(steps), before.name).not.toEqual([]);
      // a corner that stands up crosses nothing else: only its own step says that it is to lie flat
      if (!before.name.endsWith('corner'))
        expect(kind.withProgram({ ...program, steps }), before.name).not.toEqual([]);
    }
  });

  test('any one vertex moved, by 3 nm and by 1 mm', () => {
    for (const [index] of pattern.vertices.entries()) {
      for (const [x, y] of [
        [3, 0],
        [0, 3],
        [3, 3],
        [mm(1), 0],
        [0, mm(1)],
        [-mm(1), mm(1)],
      ] as const) {
        const vertices = pattern.vertices.map((at, vertex) =>
          vertex === index ? { x: at.x + x, y: at.y + y } : at,
        );
        expect(kind.withPattern({ ...pattern, vertices }), `vertex ${index} by ${x}, ${y}`).not.toEqual([]);
      }
    }
  });

  test('any one face dropped, and any one given twice', () => {
    for (const [index, face] of pattern.faces.entries()) {
      const without = { ...pattern, faces: pattern.faces.toSpliced(index, 1) };
      expect(kind.withPattern(without), `face ${index}`).not.toEqual([]);
      const twice = { ...pattern, faces: [...pattern.faces, face] };
      expect(kind.withPattern(twice), `face ${index}`).toContain('graph');
    }
  });

  test('any one edge dropped', () => {
    for (const [index] of pattern.edges.entries()) {
      const without = { ...pattern, edges: pattern.edges.toSpliced(index, 1) };
      expect(kind.withPattern(without), `edge ${index}`).toContain('graph');
    }
  });

  test('flaps folded before hems: the hems shut the mouths', () => {
    const isHem = ({ kind: of, name }: Step) => of === 'fold' && name.endsWith('hem');
    const hems = program.steps.filter(isHem);
    const last = program.steps.findIndex(({ name }) => name === 'bottom flap');
    const others = program.steps.filter((step) => !isHem(step));
    const steps = others.toSpliced(last + 1 - hems.length, 0, ...hems);
    expect(kind.withSteps(steps)).not.toEqual([]);
    expect(kind.withProgram({ ...program, steps })).toContain('pockets');
  });

  test('any two folds exchanged while the creases name their steps', () => {
    for (const [at, one] of folds.entries()) {
      for (const other of folds.slice(at + 1)) {
        const steps = program.steps.map(
          (step, index) => program.steps[index === one ? other : index === other ? one : index] ?? step,
        );
        expect(kind.withSteps(steps), `${one} and ${other}`).not.toEqual([]);
      }
    }
  });

  test('the spine bent first', () => {
    const spine = program.steps.filter(({ name }) => name.startsWith('spine'));
    const steps = [...spine, ...program.steps.filter((step) => !spine.includes(step))];
    expect(kind.withProgram({ ...program, steps })).toContain('vertices');
  });

  test('any fold the other way', () => {
    for (const fold of folds) {
      const steps = program.steps.map((step, index) =>
        index === fold && step.kind === 'fold'
          ? { ...step, direction: step.direction === 'away' ? ('toward' as const) : ('away' as const) }
          : step,
      );
      expect(kind.withSteps(steps), program.steps[fold]?.name).not.toEqual([]);
    }
  });

  test('a tuck to where no layer can get to', () => {
    for (const [panel, to, of] of [
      ['top flap, left hem', 'below', 'front'],
      ['top flap, left hem', 'above', 'bottom flap, front'],
      ['bottom flap, right hem', 'below', 'back'],
      ['left hem', 'above', 'top flap, front'],
      ['front', 'above', 'top flap, front'],
    ] as const) {
      const tuck: Step = { kind: 'tuck', name: 'tuck', panel, to, of };
      const at = program.steps.findIndex(({ name }) => name === 'bottom flap') + 1;
      const kept = program.steps.filter((step) => step.kind === 'fold');
      const steps = [...kept.slice(0, at), tuck, ...kept.slice(at)];
      expect(kind.withProgram({ ...program, steps }), `${panel} ${to} ${of}`).toContain('layers');
    }
  });

  test('a tuck of a panel that is not there', () => {
    const tuck = { kind: 'tuck', name: 'tuck', panel: 'front', to: 'above', of: 'back' } as const;
    for (const wrong of [
      { ...tuck, panel: 'pleat' },
      { ...tuck, of: 'pleat' },
      { ...tuck, of: 'pleat', to: 'below' as const },
    ])
      expect(kind.withProgram({ ...program, steps: [...program.steps, wrong] })).toEqual([
        'refused: no face lies in the panel pleat',
      ]);
  });

  test('a folded size, a pocket or a spine other than promised', () => {
    expect(kind.promising({ flat: { width: mm(210), height: mm(150.001) } })).toEqual(['size']);
    expect(kind.promising({ flat: { width: mm(209.999), height: mm(150) } })).toEqual(['size']);
    const place = {
      name: 'front pocket',
      panel: 'front',
      behind: [],
      front: ['back'],
      mouth: 'left',
    } as const;
    expect(kind.promising({ pockets: [place] })).toEqual(['pockets']);
    // six layers of 2 mm need the 10 mm that there are between the spine scores, by hand: (6 - 1) * 2
    expect(kind.promising({ caliper: mm(2) })).toEqual([]);
    expect(kind.promising({ caliper: mm(2.01) })).toEqual(['spine']);
    expect(
      kind.promising({ closed: { face: 'front', width: mm(100), height: mm(150), depth: mm(10) } }),
    ).toEqual([]);
    expect(
      kind.promising({ closed: { face: 'back', width: mm(100), height: mm(150), depth: mm(9) } }),
    ).toEqual(['size']);
    expect(
      kind.promising({ closed: { face: 'lid', width: mm(100), height: mm(150), depth: mm(10) } }),
    ).toEqual(['size']);
    expect(kind.promising({ stack: mm(60) })).toEqual(['spine']);
  });

  test('a panel lower than promised', () => {
    expect(kind.withDimensions({ 'panel.height': mm(149) })).toContain('size');
  });

  test('a step that folds nothing', () => {
    const { steps } = program;
    const idle: Step = {
      kind: 'fold',
      name: 'idle',
      line: { from: { x: -mm(10), y: 0 }, to: { x: -mm(10), y: mm(1) } },
      moving: { x: -mm(20), y: 0 },
      direction: 'toward',
      angle: 180,
    };
    expect(kind.withProgram({ ...program, steps: [...steps, idle] })).toEqual(['steps']);
  });

  test('another outline', () => {
    const outline = program.outline.map(({ x, y }, index) => ({ x: x + (index === 1 ? mm(1) : 0), y }));
    expect(
      foundBy(() =>
        prove(
          pattern,
          { ...program, outline },
          { flat: { width: mm(210), height: mm(150) }, pockets: [], ...empty },
        ),
      ),
    ).toEqual(['graph']);
  });
});

test.each(kinds.filter(({ corners }) => corners === 'folded'))(
  '$name: a hem deeper than the top flap, whose corner then reaches the panel',
  (kind) => {
    expect(kind.withDimensions({ hem: mm(60) })).toEqual([]);
    expect(kind.withDimensions({ hem: mm(61) })).not.toEqual([]);
    expect(kind.withDimensions({ hem: mm(80) })).not.toEqual([]);
  },
);

test('a pocket whose mouth is folded shut', () => {
  const program = envelope();
  const pattern = unfold(program);
  const promising = (mouth: 'left' | 'right') =>
    foundBy(() =>
      prove(pattern, program, {
        flat: { width: mm(60), height: mm(40) },
        pockets: [{ ...envelopePocket, mouth }],
        ...empty,
      }),
    );
  expect(promising('right')).toEqual([]);
  expect(promising('left')).toEqual(['pockets']);
});
