import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { movesPaper } from '../../shared/creases/fold-program.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { applyConvention } from '../../shared/drawing/apply-convention.ts';
import { drawFolder } from '../../shared/drawing/draw-folder.ts';
import { foldDocument } from '../../shared/fold-format/fold-document.ts';
import { toFold } from '../../shared/fold-format/to-fold.ts';
import { type Folded, promisedBy, proofOf } from '../../shared/folding/proof-of.ts';
import { prove } from '../../shared/folding/prove.ts';
import { inMm } from '../../shared/lengths/show-length.ts';
import { planReply } from '../../shared/plan-reply/plan-reply.ts';
import { showPlan } from '../../shared/plan-reply/show-plan.ts';
import { alternativesTo } from '../../shared/solver/alternatives.ts';
import { slackOf } from '../../shared/solver/bounds.ts';
import { fittingsOf } from '../../shared/solver/fits.ts';
import { givenIn } from '../../shared/solver/given.ts';
import type { Plan } from '../../shared/solver/plan.ts';
import { nearest, shortagesOf } from '../../shared/solver/refusal.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { styles } from '../../shared/styles/registry.ts';
import { showStyle, stylesReply } from '../../shared/styles/styles-reply.ts';
import type { ViewName } from '../../shared/views/view-name.ts';
import { pictureOf } from '../../shared/views/views.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { writePicture } from '../../src/svg/write-picture.ts';
import { writeSvg } from '../../src/svg/write-svg.ts';
import { everyGroup, piecesOf, readSvg } from '../support/read-svg.ts';
import { styleCases } from '../support/styles/index.ts';
import { collidingGroups, outsideOf } from '../views/extents.ts';
import { drawingFaults, overlapping } from './drawn-blank.ts';
import { guideFaults } from './drawn-guide.ts';
import { flatByRabbitEar } from './flat-by-rabbit-ear.ts';

/*
 * One suite for every style that is registered. A style is right when its generated specs solve or are refused with a
 * reason, when what is solved folds, and when everything that is made of it keeps its own rules.
 */

const runs = 30;
/** Pictures take their time. */
const fewRuns = 3;

const solutionOf = (raw: object) => solveFolder(folderSpec.parse(raw));

function foldedFrom(raw: object): Folded {
  const solution = solutionOf(raw);
  if (!solution.ok) throw new Error(`nothing folds for ${JSON.stringify(raw)}`);
  return proofOf(solution.plan);
}

const failing = ({ proof }: Folded): readonly string[] =>
  proof.checks.filter(({ holds }) => !holds).map(({ name, message }) => `${name}: ${message}`);

const mmOf =
  ({ dimensions }: Plan) =>
  (name: string): number => {
    const value = dimensions[name];
    if (value === undefined) throw new Error(`there is no dimension ${name}`);
    return inMm(value);
  };

/** A generated spec with what the solver makes of it, and what its plan folds into. */
interface Sample {
  readonly raw: object;
  readonly solution: ReturnType<typeof solveFolder>;
  readonly folded: Folded | undefined;
}

/** Generated specs, the same ones in every run unless HEMFOLD_SEED says otherwise. */
function sampled(specs: fc.Arbitrary<object>): readonly Sample[] {
  const { seed = 1 } = fc.readConfigureGlobal();
  return fc.sample(specs, { numRuns: runs, seed }).map((raw) => {
    const solution = solutionOf(raw);
    return { raw, solution, folded: solution.ok ? proofOf(solution.plan) : undefined };
  });
}

test('every style that is registered has a case, and no other', () => {
  expect(styleCases.map(({ style }) => style).toSorted()).toEqual(styles.map(({ name }) => name).toSorted());
});

test('the reply that lists styles names each once, with what its solver finds', () => {
  const reply = stylesReply.parse({ styles: styles.map(showStyle) });
  expect(new Set(reply.styles.map(({ name }) => name)).size).toBe(styles.length);
  for (const { dimensions, title, summary } of reply.styles) {
    expect(dimensions.length).toBeGreaterThan(1);
    expect([title, summary].every((text) => text.length > 2)).toBe(true);
  }
});

describe.each(styleCases)('$style', ({ style, example, specs, blankByHand }) => {
  const own = styles.find(({ name }) => name === style);
  if (!own) throw new Error(`${style} is not registered`);

  const samples = sampled(specs);
  const everyFolded = samples.flatMap(({ folded }) => folded ?? []);

  test('solves or refuses with reasons, and never plans what does not fit', () => {
    for (const { raw, solution } of samples) {
      if (!solution.ok) {
        const shortages = shortagesOf(nearest(solution.misfits), folderSpec.parse(raw).measure);
        expect(shortages.length).toBeGreaterThan(0);
        for (const { message, shortfall } of shortages) {
          expect(message.length).toBeGreaterThan(10);
          expect(shortfall).toBeGreaterThan(0);
        }
        continue;
      }
      const { plan } = solution;
      for (const bound of plan.bounds)
        expect(slackOf(bound, plan.dimensions), bound.name).toBeGreaterThanOrEqual(-0.5);
      for (const room of plan.arrangement.rooms) {
        expect(plan.blank.width).toBeLessThanOrEqual(room.width);
        expect(plan.blank.height).toBeLessThanOrEqual(room.height);
      }
    }
    expect(everyFolded.length).toBeGreaterThan(samples.length / 2);
  });

  test('every plan folds into what it promises', () => {
    for (const folded of everyFolded) expect(failing(folded), JSON.stringify(folded.plan.spec)).toEqual([]);
  });

  test('the blank is as large as its parts add up to by hand', () => {
    for (const { plan } of everyFolded) {
      const [width, height] = blankByHand(mmOf(plan), plan.spec);
      expect(inMm(plan.blank.width)).toBeCloseTo(width, 5);
      expect(inMm(plan.blank.height)).toBeCloseTo(height, 5);
    }
  });

  test('given dimensions are kept exactly, and still fold or are refused with a reason', () => {
    const shares = fc.sample(
      fc.array(fc.double({ min: 0.7, max: 1.3, noNaN: true }), { minLength: 12, maxLength: 12 }),
      { numRuns: runs, seed: 3 },
    );
    let kept = 0;
    for (const [index, { raw, solution }] of samples.entries()) {
      if (!solution.ok) continue;
      const dimensions = someOf(solution.plan, shares[index] ?? []);
      const parsed = folderSpec.safeParse({ ...raw, dimensions });
      if (!parsed.success) continue;
      const again = solveFolder(parsed.data);
      if (!again.ok) {
        expect(shortagesOf(nearest(again.misfits), parsed.data.measure).length).toBeGreaterThan(0);
        continue;
      }
      kept++;
      for (const { name } of own.dimensionNames) {
        const given = givenIn(parsed.data, name);
        if (given !== undefined) expect(again.plan.dimensions[name], name).toBe(given);
      }
      expect(failing(proofOf(again.plan)), JSON.stringify(parsed.data)).toEqual([]);
    }
    expect(kept).toBeGreaterThan(3);
  });

  test('what it says that it holds, it holds', () => {
    for (const { plan, proof } of everyFolded) {
      expect(proof.pockets.map(({ name }) => name)).toEqual(own.pockets.map(({ name }) => name));
      const { load, arrangement } = plan;
      if (!load) continue;
      const { width, height } = load.item;
      const [across, along] = arrangement.itemTurned ? [height, width] : [width, height];
      for (const pocket of proof.pockets) {
        expect(pocket.width, pocket.name).toBeGreaterThanOrEqual(across);
        // cards stand out of a band that is open above and below
        const through = own.pockets.every(({ walls }) => walls && !walls.includes('top'));
        if (!through) expect(pocket.height, pocket.name).toBeGreaterThanOrEqual(along);
      }
    }
  });

  test('each set that fits a plan without contents gives a plan of its own with the same dimensions', () => {
    const { plan } = foldedFrom(example);
    const { contents: _, ...bare } = example as Readonly<Record<string, unknown>>;
    const dimensions = written(
      plan,
      own.dimensionNames.map(({ name }) => name),
    );
    const sized = solutionOf({ ...bare, dimensions });
    if (!sized.ok) throw new Error('the same dimensions fold without contents');
    const fittings = fittingsOf(sized.plan);
    if (own.pockets.length === 0) expect(fittings).toEqual([]);
    for (const { item, envelope, perPocket, turned } of fittings) {
      const contents = {
        item: { size: item.id },
        ...(envelope ? { envelope: { size: envelope.id } } : {}),
        perPocket,
        turned,
      };
      const filled = solutionOf({ ...bare, dimensions, contents });
      expect(filled.ok, `${item.id} × ${perPocket}`).toBe(true);
    }
  });

  test('every drawing keeps the rules of drawings', () => {
    for (const folded of everyFolded)
      expect(drawingFaults(folded, readSvg(svgOfFolder(folded.plan.spec)))).toEqual([]);
  });

  test('its guide shows where it is glued and nothing else, clear of edges and scores', () => {
    for (const { plan } of everyFolded) {
      const convention = { outline: 'always', layers: { guide: {} } } as const;
      const folded = proofOf({ ...plan, spec: { ...plan.spec, convention } });
      const drawing = { ...drawFolder(folded), turned: false };
      const read = readSvg(writeSvg(applyConvention(drawing, convention)));
      expect(guideFaults(folded, read), JSON.stringify(plan.spec)).toEqual([]);
      const every = everyGroup(read.groups).flatMap((group) => piecesOf(group.paths));
      expect(overlapping(every)).toEqual([]);
    }
  });

  test('every view and step has its picture, within its page', () => {
    for (const folded of [foldedFrom(example), ...everyFolded.slice(0, fewRuns)]) {
      const views: readonly ViewName[] = [
        'all',
        'sheet',
        'outside',
        'inside',
        'closed',
        'half-open',
        'steps',
        ...folded.program.steps.map((__, index): ViewName => `step-${index + 1}`),
      ];
      for (const view of views) {
        const picture = pictureOf(folded, view);
        if (!picture) throw new Error(`there is no ${view}`);
        expect(outsideOf(picture), view).toEqual([]);
        expect(collidingGroups(picture), view).toEqual([]);
        expect(writePicture(picture), view).not.toMatch(/NaN|Infinity|undefined/u);
      }
      expect(pictureOf(folded, `step-${folded.program.steps.length + 1}`)).toBeUndefined();
    }
  });

  test('its plan is told whole', () => {
    const folded = foldedFrom(example);
    const reply = showPlan(folded, {
      alternatives: alternativesTo(folded.plan),
      fittings: fittingsOf(folded.plan),
    });
    expect(() => planReply.parse(reply)).not.toThrow();
    for (const { alternatives } of [reply])
      expect(alternatives.every(({ message }) => message !== '')).toBe(true);
    for (const { path } of reply.warnings) expect(path).toMatch(/^\//u);
    for (const { regions } of reply.regions) expect(regions.length).toBeGreaterThan(0);
  });

  test('its FOLD file is one, bent in every frame as it says', () => {
    const folded = foldedFrom(example);
    const file = foldDocument.parse(toFold(folded, 'test'));
    expect(file.file_frames).toHaveLength(2 + folded.program.steps.filter(movesPaper).length);
    for (const frame of file.file_frames) {
      for (const [edge, [one, other]] of file.edges_faces.entries()) {
        if (one === null || other === null) continue;
        const [a, b] = [one, other].map((face) =>
          normalOf((file.faces_vertices[face] ?? []).map((vertex) => frame.vertices_coords[vertex] ?? [])),
        );
        if (!a || !b) throw new Error('a face has no normal');
        const cosine = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
        const bent = ((frame.edges_foldAngle[edge] ?? Number.NaN) * Math.PI) / 180;
        expect(cosine, `${frame.frame_title}, edge ${edge}`).toBeCloseTo(Math.cos(bent), 6);
      }
    }
    const { depth, width, height } = own.closed(folded.plan.dimensions, folded.plan.spec);
    const closed = file.file_frames[1]?.vertices_coords ?? [];
    const sizes = [0, 1, 2].map((axis) => {
      const values = closed.map((point) => point[axis] ?? 0);
      return Math.max(...values) - Math.min(...values);
    });
    const expected = [width, height, depth ?? 0].map(inMm);
    for (const [index, size] of sizes.toSorted((p, q) => p - q).entries())
      expect(size).toBeCloseTo(expected.toSorted((p, q) => p - q)[index] ?? Number.NaN, 4);
  });

  test('another library folds it flat to the same place', () => {
    for (const folded of everyFolded) expect(flatByRabbitEar(folded)).toBeLessThanOrEqual(1e-6);
  });

  test('a proof notices what is spoilt', () => {
    const { plan, pattern, program } = foldedFrom(example);
    const promised = promisedBy(plan);
    const found = (mutant: typeof pattern) =>
      prove(mutant, program, promised).checks.flatMap(({ name, holds }) => (holds ? [] : [name]));
    expect(found(pattern)).toEqual([]);
    for (const [index, edge] of pattern.edges.entries()) {
      if (edge.letter !== 'V' && edge.letter !== 'M') continue;
      const letter = edge.letter === 'V' ? ('M' as const) : ('V' as const);
      const flipped = { ...edge, letter, foldAngle: -edge.foldAngle };
      expect(found({ ...pattern, edges: pattern.edges.with(index, flipped) }), `edge ${index}`).toContain(
        'steps',
      );
    }
    for (const [index, point] of pattern.vertices.entries()) {
      // a corner between pieces that run on flat can be anywhere on the panel
      if (pattern.edges.every(({ ends, letter }) => letter === 'F' || !ends.includes(index))) continue;
      const moved = { x: point.x + 1e6, y: point.y + 1e6 };
      expect(
        found({ ...pattern, vertices: pattern.vertices.with(index, moved) }),
        `vertex ${index}`,
      ).not.toEqual([]);
    }
    expect(prove(pattern, program, { ...promised, flat: { width: 1, height: 1 } }).holds).toBe(false);
  });

  test.runIf(own.pockets.length > 0)('a fold the other way, or one left out, spoils what it holds', () => {
    const { plan, program } = foldedFrom(example);
    const promised = promisedBy(plan);
    for (const [index, step] of program.steps.entries()) {
      if (step.kind !== 'fold') continue;
      const direction = step.direction === 'toward' ? ('away' as const) : ('toward' as const);
      for (const [what, steps] of [
        ['the other way', program.steps.with(index, { ...step, direction })],
        ['left out', program.steps.toSpliced(index, 1)],
      ] as const) {
        const mutant = { ...program, steps };
        const holds = () => {
          try {
            return prove(unfold(mutant), mutant, promised).holds;
          } catch {
            return false;
          }
        };
        expect(holds(), `${step.name} ${what}`).toBe(false);
      }
    }
  });

  test('nothing else in the program knows its name', () => {
    const root = join(import.meta.dirname, '../..');
    const files = globSync('{shared,src,routes}/**/*.{ts,tsx}', { cwd: root }).filter(
      (file) =>
        !file.startsWith(`shared/styles/${style}/`) &&
        file !== 'shared/styles/registry.ts' &&
        // examples, the spec that `hemfold` writes first, and the page’s first choice
        !/^src\/(?:contract|cli\/first-spec|page)/u.test(file),
    );
    expect(files.length).toBeGreaterThan(200);
    const guilty = files.filter((file) => names(readFileSync(join(root, file), 'utf8'), style));
    expect(guilty).toEqual([]);
  });
});

/** Whether a text asks for a style by its name, or takes something out of its folder. */
function names(text: string, style: string): boolean {
  const quoted = `['"\`]${style}['"\`]`;
  return (
    new RegExp(
      `styles/${style}/|\\bstyle\\b[^\\n]{0,12}[=:]==?\\s*${quoted}|\\bstyle['"]?:\\s*${quoted}`,
      'u',
    ).test(text) ||
    // a name of two words is nobody else's
    (style.includes('-') && text.includes(style))
  );
}

test('the check for names finds what it is for', () => {
  expect(names("if (spec.style === 'tag') return;", 'tag')).toBe(true);
  expect(names("import { at } from '../styles/tag/spec.ts';", 'tag')).toBe(true);
  expect(names("{ style: 'tag' }", 'tag')).toBe(true);
  expect(names('twin-sleeve', 'twin-sleeve')).toBe(true);
  expect(names("const kind = 'envelope';", 'envelope')).toBe(false);
});

test('the check for lines that lie on each other finds them', () => {
  const at = (x: number, y: number) => ({ x, y });
  const pieces = [
    [at(0, 0), at(10, 10)],
    [at(5, 5), at(12, 12)],
    [at(0, 1), at(10, 11)],
  ] as const;
  expect(overlapping(pieces)).toHaveLength(1);
});

/** Some of a plan's dimensions as a spec gives them, a little off. */
function someOf(plan: Plan, shares: readonly number[]): object {
  const names = Object.keys(plan.dimensions).filter((name, index) => {
    const share = shares[index] ?? 1;
    return share > 1 && givenIn(plan.spec, name) === undefined && (plan.dimensions[name] ?? 0) > 0;
  });
  return written(plan, names, (name) => {
    const share = shares[Object.keys(plan.dimensions).indexOf(name)] ?? 1;
    // half of them as they are
    return share > 1.15 ? share - 0.15 : 1;
  });
}

/** Dimensions as a spec gives them, to the nanometre; what does not occur is left out. */
function written(plan: Plan, names: readonly string[], factor: (name: string) => number = () => 1): object {
  const tree: Record<string, unknown> = {};
  for (const name of names) {
    const value = Math.round((plan.dimensions[name] ?? 0) * factor(name));
    if (value === 0) continue;
    const [group = '', member] = name.split('.');
    const text = `${(value / 1e6).toFixed(6)} mm`;
    tree[group] = member === undefined ? text : { ...(tree[group] as object | undefined), [member]: text };
  }
  return tree;
}

type Vector = readonly [number, number, number];

/** Out of the side from which corners run counter-clockwise, of length 1. Newell's method. */
function normalOf(corners: readonly (readonly number[])[]): Vector {
  const sum = corners.reduce<Vector>(
    (total, [x = 0, y = 0, z = 0], index) => {
      const [u = 0, v = 0, w = 0] = corners[(index + 1) % corners.length] ?? [];
      return [total[0] + (y - v) * (z + w), total[1] + (z - w) * (x + u), total[2] + (x - u) * (y + v)];
    },
    [0, 0, 0],
  );
  const length = Math.hypot(...sum);
  return [sum[0] / length, sum[1] / length, sum[2] / length];
}
