import { inch, mm } from '../../shared/lengths/nanometres.ts';
import type { SolveLinear } from '../../shared/nesting/linear-program.ts';
import { nest, runToEnd } from '../../shared/nesting/nest.ts';
import type { NestInput } from '../../shared/nesting/nest-spec.ts';
import { SET_EVALUATIONS } from '../../shared/sets/nested-paper.ts';

/** All that is cut for a class. */
export interface ClassFigures {
  readonly kits: number;
  readonly on: string;
  readonly pieces: number;
  readonly sheets: number;
  readonly bound: number;
  readonly ms: number;
}

const sheets = {
  A3: [mm(297), mm(420)],
  'SRA3 (320 × 450 mm)': [mm(320), mm(450)],
  '12 × 12 in': [inch(12), inch(12)],
} as const;

/** In each kit: four cards, four mats, two tags and four toppers; then a folder, four cards, four envelopes and two tags. */
const kits: Readonly<Record<string, readonly (readonly [width: number, height: number, perKit: number])[]>> =
  {
    'cards, mats, tags, toppers': [
      [148, 105, 4],
      [95, 138, 4],
      [50, 90, 2],
      [60, 60, 4],
    ],
    'folder, cards, envelopes, tags': [
      [230, 275, 1],
      [210, 148, 4],
      [202, 251, 4],
      [40, 75, 2],
    ],
  };

/** Classes of 30, 120 and 500 kits on three kinds of sheets, nested as a set of rectangles is. */
export function measureClasses(solve: SolveLinear): Readonly<Record<string, readonly ClassFigures[]>> {
  return Object.fromEntries(
    Object.entries(kits).map(([name, list]) => [
      name,
      Object.entries(sheets).flatMap(([on, [width, height]]) =>
        [30, 120, 500].map((count) => {
          const spec: NestInput = {
            pieces: list.map(([wide, high, perKit], index) => ({
              name: `piece ${index}`,
              width: mm(wide),
              height: mm(high),
              count: count * perKit,
              paper: 'card',
            })),
            sheets: [{ paper: 'card', width, height }],
            evaluations: SET_EVALUATIONS,
          };
          const started = performance.now();
          const nesting = runToEnd(nest(spec, solve));
          return {
            kits: count,
            on,
            pieces: spec.pieces.reduce((sum, piece) => sum + piece.count, 0),
            sheets: nesting.sheets,
            bound: nesting.bound,
            ms: performance.now() - started,
          };
        }),
      ),
    ]),
  );
}
