import { type Control, goesOn, nodesLeft, paid, type Steps, spend } from './control.ts';
import type { FitOracle } from './fit-oracle.ts';
import type { Job } from './job.ts';
import type { SolveLinear } from './linear-program.ts';
import { limitedSheets, masterProgram } from './master.ts';
import { type Pattern, patternKey } from './plan.ts';
import { price } from './price.ts';

/** Rounds of new patterns, and patterns kept, at most. */
const mostRounds = 80;
const mostPatterns = 1500;

/** Positions looked at for one layout: more when nothing is found with fewer. */
const firstNodes = 10_000;

/** What a pattern must be worth beyond its cost to be new to the linear program; far above its tolerance. */
const gain = 1e-6;

/**
 * Column generation: asks the linear program what each box is worth, adds layouts that are worth more than a sheet, and so
 * on. Every round bounds the number of sheets from below, whether or not the best layout was found: with boxes worth `v`
 * no plan uses fewer sheets than the worth of all boxes divided by the most that one sheet can be worth.
 * Source: Farley, "A note on bounding a class of linear programming problems", Oper. Res. 38 (1990) 922-923
 * (from memory).
 * @param patterns some with which all boxes can be placed
 * @param oracles by room
 * @param thorough goes on with longer searches where short ones find nothing new
 */
export function* generatePatterns(
  job: Job,
  patterns: readonly Pattern[],
  solve: SolveLinear,
  control: Control,
  oracles: readonly FitOracle[],
  thorough: boolean,
): Steps<readonly Pattern[]> {
  const pool = new Map(patterns.map((pattern) => [patternKey(pattern), pattern] as const));
  const limited = limitedSheets(job);
  let bound = 0;
  let effort = firstNodes;
  for (let round = 0; round < mostRounds && pool.size < mostPatterns && goesOn(control); round++) {
    const solution = solve(masterProgram(job, [...pool.values()], undefined));
    if (solution === undefined || !solution.optimal) break;
    const values = job.boxes.map((_, box) => positive(solution.duals[box] ?? 0));
    const rents = new Map(
      limited.map((sheet, index) => [sheet, Math.max(0, -(solution.duals[job.boxes.length + index] ?? 0))]),
    );
    const most = new Map<number, number>();
    let added = false;
    for (let room = 0; room < job.rooms.length; room++) {
      const { sheet } = job.rooms[room] as Job['rooms'][number];
      const cost = 1 + (rents.get(sheet) ?? 0) + gain;
      const nodes = Math.min(effort, nodesLeft(control) / 2);
      const priced = yield* paid(control, price(job, room, values, cost, nodes, oracles[room] as FitOracle));
      most.set(sheet, Math.max(most.get(sheet) ?? 0, priced.bound));
      if (priced.value <= cost) continue;
      const pattern = { room, spots: priced.spots, times: 0 };
      const key = patternKey(pattern);
      if (!pool.has(key)) added = true;
      pool.set(key, pattern);
    }
    bound = Math.max(bound, farley(job, values, most));
    control.bound = Math.max(control.bound, Math.ceil(bound - 1e-6));
    const open = yield* spend(control, 1);
    if (!open || Math.ceil(bound - 1e-6) >= Math.ceil(solution.objective - 1e-6)) break;
    if (added) continue;
    // the last and longest search may take half of what is left
    if (!thorough || effort >= nodesLeft(control) / 2) break;
    effort *= 4;
  }
  return [...pool.values()];
}

/** Without what is but rounding. */
const positive = (value: number): number => (value > 1e-9 ? value : 0);

/** @param most by sheet, what no layout on it exceeds */
function farley(job: Job, values: readonly number[], most: ReadonlyMap<number, number>): number {
  const endless = [...most].filter(([sheet]) => !Number.isFinite(job.stock.get(sheet)));
  const scale = Math.max(1, ...endless.map(([, value]) => value));
  const worth = job.boxes.reduce((sum, { count }, box) => sum + count * (values[box] ?? 0), 0) / scale;
  const rent = [...most].reduce((sum, [sheet, value]) => {
    const there = job.stock.get(sheet) ?? 0;
    return Number.isFinite(there) ? sum + there * Math.max(0, value / scale - 1) : sum;
  }, 0);
  return worth - rent;
}
