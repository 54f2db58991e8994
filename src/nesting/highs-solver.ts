import loadHighs, { type Highs, type ModelData } from 'highs';
import type { LinearProgram, LinearSolution, SolveLinear } from '../../shared/nesting/linear-program.ts';

/** Nothing here depends on time or chance: the same program gets the same answer. */
const options = { output_flag: false, mip_rel_gap: 0, random_seed: 1 };

/** How a run may end with a solution, as HiGHS numbers it. */
const ended = { optimal: 7, iterationLimit: 14, solutionLimit: 16 };

/** Linear and whole-number programs solved by HiGHS, compiled to WebAssembly. */
export async function highsSolver(): Promise<SolveLinear> {
  // the package's types describe its CommonJS build; as a module its default is the function itself
  const load = loadHighs as unknown as typeof loadHighs.default;
  const highs = await load();
  return (program) => solve(highs, program);
}

function solve(highs: Highs, program: LinearProgram): LinearSolution | undefined {
  const model = highs.createModel(modelOf(highs, program));
  try {
    const nodes = program.maxNodes === undefined ? {} : { mip_max_nodes: program.maxNodes };
    model.options.set({ ...options, ...nodes });
    model.run();
    const status = model.getModelStatus();
    if (!Object.values<number>(ended).includes(status)) return undefined;
    const { colValue, rowDual } = model.getSolution();
    const values = [...colValue];
    if (values.length < program.costs.length || !keeps(program, values)) return undefined;
    const objective = program.costs.reduce((sum, cost, index) => sum + cost * (values[index] ?? 0), 0);
    return { optimal: status === ended.optimal, objective, values, duals: [...rowDual] };
  } finally {
    model.dispose(); // nothing else gives its memory back
  }
}

function modelOf(highs: Highs, { costs, rows, whole }: LinearProgram): ModelData {
  const terms = rows.flatMap((row) => row.terms);
  const starts = [0];
  for (const { terms } of rows) starts.push((starts.at(-1) ?? 0) + terms.length);
  return {
    numCols: costs.length,
    numRows: rows.length,
    colCost: costs,
    colLower: costs.map(() => 0),
    colUpper: costs.map(() => highs.infinity),
    rowLower: rows.map(({ kind, limit }) => (kind === 'at least' ? limit : -highs.infinity)),
    rowUpper: rows.map(({ kind, limit }) => (kind === 'at most' ? limit : highs.infinity)),
    matrix: {
      format: 'csr',
      numRows: rows.length,
      numCols: costs.length,
      starts,
      indices: terms.map(([variable]) => variable),
      values: terms.map(([, factor]) => factor),
    },
    ...(whole ? { integrality: costs.map(() => 1 as const) } : {}),
  };
}

/** A search cut short may hold no solution: its values are then of no use. */
const keeps = ({ rows, whole }: LinearProgram, values: readonly number[]): boolean =>
  (!whole || values.every((value) => Math.abs(value - Math.round(value)) < 1e-6)) &&
  rows.every(({ terms, kind, limit }) => {
    const sum = terms.reduce((total, [variable, factor]) => total + factor * (values[variable] ?? 0), 0);
    const slip = 1e-6 * Math.max(1, Math.abs(limit));
    return kind === 'at least' ? sum >= limit - slip : sum <= limit + slip;
  });
