import { inch, mm } from '../../shared/lengths/nanometres.ts';
import { construct } from '../../shared/nesting/construct.ts';
import { rules, sizeKeys } from '../../shared/nesting/fill-by-order.ts';
import { jobsOf } from '../../shared/nesting/job.ts';
import { nest, runToEnd } from '../../shared/nesting/nest.ts';
import { type NestInput, nestSpec } from '../../shared/nesting/nest-spec.ts';
import { sheetsOf } from '../../shared/nesting/plan.ts';
import { randomFrom } from '../../shared/nesting/random.ts';

export interface Growth {
  readonly pieces: number;
  readonly sheets: number;
  readonly ms: number;
  /** Beside the row before, which has a tenth of the pieces. */
  readonly ratio?: number;
  /** What n log n would give. */
  readonly expected?: number;
}

/** All of different sizes, or ten sizes over and over, on 12 × 12 in sheets. */
function manyPieces(pieces: number, kinds: number): NestInput {
  const random = randomFrom(5);
  const side = () => mm(20 + random.below(130_000) / 1000);
  return {
    pieces: Array.from({ length: kinds }, (_, kind) => ({
      name: `piece ${kind}`,
      width: side(),
      height: side(),
      count: pieces / kinds,
      paper: 'card',
    })),
    sheets: [{ paper: 'card', width: inch(12), height: inch(12) }],
    evaluations: 200,
  };
}

const sizes = [10, 100, 1000, 10_000];

/** Filling sheets once in one order; the whole search with a bound of 200 evaluations; the same with ten sizes. */
export const growthOf = {
  'one filling, all sizes different': (pieces: number) => {
    const [job] = jobsOf(nestSpec.parse(manyPieces(pieces, pieces)));
    if (job === undefined) throw new Error('no job');
    const counts = job.boxes.map(({ count }) => count);
    const way = { by: 'order', key: sizeKeys.area, rule: rules.shortSide } as const;
    return () => sheetsOf(construct(job, counts, job.stock, way, 'largest').plan);
  },
  'whole search, all sizes different': (pieces: number) => {
    const spec = manyPieces(pieces, pieces);
    return () => runToEnd(nest(spec)).sheets;
  },
  'whole search, ten sizes': (pieces: number) => {
    const spec = manyPieces(pieces, 10);
    return () => runToEnd(nest(spec)).sheets;
  },
} as const;

export function measureGrowth(prepare: (pieces: number) => () => number, rounds: number): readonly Growth[] {
  const warm = prepare(1000);
  for (let round = 0; round < 5 * rounds; round++) warm(); // compiled before it is measured
  const rows: Growth[] = [];
  for (const pieces of sizes) {
    const run = prepare(pieces);
    let [ms, sheets] = [Number.POSITIVE_INFINITY, 0];
    // short runs are measured more often, since chance weighs more in them
    for (let round = 0; round < rounds * Math.max(2, 1000 / pieces); round++) {
      const started = performance.now();
      sheets = run();
      ms = Math.min(ms, performance.now() - started);
    }
    const before = rows.at(-1);
    const order = (count: number) => count * Math.log2(count);
    rows.push({
      pieces,
      sheets,
      ms,
      ...(before === undefined
        ? {}
        : { ratio: ms / before.ms, expected: order(pieces) / order(before.pieces) }),
    });
  }
  return rows;
}
