import { Bench } from 'tinybench';
import { unfold } from '../../shared/creases/unfold.ts';
import { applyConvention } from '../../shared/drawing/apply-convention.ts';
import { drawFolder } from '../../shared/drawing/draw-folder.ts';
import { promisedBy } from '../../shared/folding/proof-of.ts';
import { prove } from '../../shared/folding/prove.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { styleOf } from '../../shared/styles/registry.ts';
import { solveOrRefuse } from '../../src/folders/solve-or-refuse.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { readWith } from '../../src/problem/read-with.ts';
import { writeSvg } from '../../src/svg/write-svg.ts';
import { median } from './median.ts';
import { specNumber } from './specs.ts';

export interface Stage {
  readonly name: string;
  /** Mean time for one spec, µs. */
  readonly micros: number;
  /** Of the whole pipeline. */
  readonly share: number;
}

const specs = 600;
const warmUpMs = 500;

const read = (body: object) => readWith(folderSpec, body);
const stageNames = [
  'read (zod)',
  'solve',
  'unfold',
  'fold and prove',
  'draw',
  'convention',
  'serialise',
] as const;

/** The whole pipeline once: its text, and the times at which a stage ended and the next began, ms. */
function pipeline(body: object) {
  const now = () => performance.now();
  const start = now();
  const spec = read(body);
  const understood = now();
  const plan = solveOrRefuse(spec);
  const solved = now();
  const style = styleOf(plan.spec);
  const program = style.program(plan.spec, plan.dimensions, plan.arrangement.sheet.paper.caliper);
  const pattern = unfold(program);
  const unfolded = now();
  const proof = prove(pattern, program, promisedBy(plan));
  const proved = now();
  const drawing = drawFolder({ plan, program, pattern, proof });
  const drawn = now();
  const figure = applyConvention(drawing, spec.convention);
  const styled = now();
  const svg = writeSvg(figure);
  return { svg, stamps: [start, understood, solved, unfolded, proved, drawn, styled, now()] };
}

/** The part of one stage, or of the whole without one, and what the call took altogether. */
function part(stamps: readonly number[], stage: number | undefined) {
  const between = (from: number, to: number) => (stamps[to] ?? Number.NaN) - (stamps[from] ?? Number.NaN);
  const all = between(0, stageNames.length);
  return {
    overriddenDuration: stage === undefined ? all : between(stage, stage + 1),
    overriddenIterationCost: all,
  };
}

/** One turn of every task, µs each: every stage, then the whole. */
async function turn(bodies: readonly object[], milliseconds: number): Promise<number[]> {
  const bench = new Bench({ time: milliseconds, warmup: false, throws: true });
  for (const [stage, name] of [...stageNames, 'whole'].entries()) {
    let next = 0;
    const measure = () => {
      const { stamps } = pipeline(bodies[next++ % bodies.length] ?? {});
      return part(stamps, stage < stageNames.length ? stage : undefined);
    };
    bench.add(name, measure, { async: false });
  }
  return (await bench.run()).map(({ name, result }) => {
    if (result.state !== 'completed') throw new Error(`the stage ${name} was not measured`);
    return result.latency.mean * 1000;
  });
}

function checkAgainstService(bodies: readonly object[]): void {
  for (const body of bodies)
    if (pipeline(body).svg !== svgOfFolder(read(body)))
      throw new Error('these stages are no longer the stages of the service');
}

/** What the proof takes beside drawing and serialising; at most 1 is the aim. */
export function proofShare(stages: readonly Stage[]): number {
  const micros = (...names: readonly (typeof stageNames)[number][]) =>
    stages
      .filter(({ name }) => names.some((each) => each === name))
      .reduce((sum, stage) => sum + stage.micros, 0);
  return micros('fold and prove') / micros('draw', 'convention', 'serialise');
}

/**
 * Where the time of one drawing goes, in this process, without HTTP; medians over the turns. Every task runs
 * the whole pipeline and reports its own part, since a stage by itself in a loop runs faster than among the
 * others.
 */
export async function measureStages(turns: number, milliseconds: number): Promise<Stage[]> {
  const bodies = Array.from({ length: specs }, (_, index) => specNumber(index));
  checkAgainstService(bodies);
  await turn(bodies, warmUpMs);
  const means: (readonly number[])[] = [];
  for (let count = 0; count < turns; count++) means.push(await turn(bodies, milliseconds));
  return [...stageNames, 'whole'].map((name, task) => ({
    name,
    micros: median(means.map((each) => each[task] ?? Number.NaN)),
    share: median(means.map((each) => (each[task] ?? Number.NaN) / (each.at(-1) ?? Number.NaN))),
  }));
}
