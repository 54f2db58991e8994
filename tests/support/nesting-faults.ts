import type { NestInput } from '../../shared/nesting/nest-spec.ts';
import type { Nesting, Placed, SheetLayout } from '../../shared/nesting/nesting.ts';
import { type Corner, distanceApart } from './distance-apart.ts';

/*
 * An independent reading of what a nesting promises: nothing is taken from the engine but its types. Pieces are compared
 * pair by pair, in whole nanometres.
 */

const gapBetween = (one: Placed, other: Placed): number =>
  Math.max(
    one.x - (other.x + other.width),
    other.x - (one.x + one.width),
    one.y - (other.y + other.height),
    other.y - (one.y + one.height),
  );

/** How far two pieces lie from each other: their boxes, or where one has an outline their outlines. */
function apart(spec: NestInput, one: Placed, other: Placed): number {
  const hasOutline = [one, other].some(({ piece }) => spec.pieces[piece]?.outline !== undefined);
  return hasOutline ? distanceApart(lying(spec, one), lying(spec, other)) : gapBetween(one, other);
}

/** The corners of a piece where it lies, turned clockwise as seen about its box. */
function lying(spec: NestInput, { piece, x, y, width, height, turn }: Placed): Corner[] {
  const { outline } = spec.pieces[piece] ?? {};
  if (outline === undefined)
    return [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ];
  return outline.map((corner) => {
    let [across, along] = [corner.x, corner.y];
    let [wide, high] = turn % 180 === 0 ? [width, height] : [height, width];
    for (let quarter = 0; quarter < turn / 90; quarter++) {
      [across, along] = [high - along, across];
      [wide, high] = [high, wide];
    }
    return { x: x + across, y: y + along };
  });
}

/** Everything that is wrong with a nesting, in words; none when it keeps every promise. */
export const nestingFaults = (spec: NestInput, nesting: Nesting): string[] => [
  ...nesting.layouts.flatMap((layout, number) =>
    layoutFaults(spec, layout).map((fault) => `layout ${number}: ${fault}`),
  ),
  ...countFaults(spec, nesting),
  ...boundFaults(nesting),
];

const where = (...checks: readonly (readonly [boolean, string])[]): string[] =>
  checks.flatMap(([holds, fault]) => (holds ? [] : [fault]));

function layoutFaults(spec: NestInput, layout: SheetLayout): string[] {
  const sheet = spec.sheets[layout.sheet];
  if (sheet === undefined) return ['no such sheet'];
  const gap = spec.gap ?? 0;
  const near = layout.placed.flatMap((one, at) =>
    layout.placed.slice(0, at).flatMap((other, before) => {
      return apart(spec, one, other) < gap ? [`places ${before} and ${at} are too near`] : [];
    }),
  );
  return [
    ...where([layout.times >= 1, `used ${layout.times} times`], [layout.placed.length > 0, 'empty']),
    ...layout.placed.flatMap((placed, at) =>
      placeFaults(spec, layout, sheet, placed).map((fault) => `place ${at}: ${fault}`),
    ),
    ...near,
  ];
}

function placeFaults(
  spec: NestInput,
  layout: SheetLayout,
  sheet: NestInput['sheets'][number],
  placed: Placed,
): string[] {
  const piece = spec.pieces[placed.piece];
  if (piece === undefined) return ['no such piece'];
  const margin = sheet.margin ?? 0;
  const upright = placed.turn % 180 === 0;
  const [width, height] = upright ? [piece.width, piece.height] : [piece.height, piece.width];
  const turns = { none: [0], half: [0, 180], quarter: [0, 90, 180, 270] }[piece.turns ?? 'quarter'];
  const inside =
    placed.x >= margin &&
    placed.y >= margin &&
    placed.x + placed.width <= sheet.width - margin &&
    placed.y + placed.height <= sheet.height - margin;
  return where(
    [placed.width === width && placed.height === height, 'wrong size'],
    [turns.includes(placed.turn), `turned by ${placed.turn}`],
    [piece.paper === sheet.paper, 'on the wrong paper'],
    [piece.face === undefined || piece.face === layout.face, 'wrong face up'],
    [inside, 'outside the margins'],
    [[placed.x, placed.y].every(Number.isInteger), 'not in whole nanometres'],
  );
}

function countFaults(spec: NestInput, { layouts, unplaced }: Nesting): string[] {
  const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
  return [
    ...spec.pieces.flatMap(({ count }, piece) => {
      const placed = sum(
        layouts.map((layout) => layout.times * layout.placed.filter((each) => each.piece === piece).length),
      );
      const left = sum(unplaced.filter((each) => each.piece === piece).map((each) => each.count));
      return where([
        placed + left === count,
        `piece ${piece}: ${placed} placed and ${left} left of ${count}`,
      ]);
    }),
    ...spec.sheets.flatMap(({ count = Number.POSITIVE_INFINITY }, sheet) => {
      const used = sum(layouts.filter((layout) => layout.sheet === sheet).map(({ times }) => times));
      return where([used <= count, `sheet ${sheet}: ${used} used of ${count}`]);
    }),
  ];
}

function boundFaults({ layouts, sheets, bound, gap, proved, utilisation }: Nesting): string[] {
  const used = layouts.reduce((total, { times }) => total + times, 0);
  return where(
    [sheets === used, `${sheets} sheets said, ${used} used`],
    [bound <= sheets, 'the bound is above the result'],
    [gap === sheets - bound, 'the gap is not the difference'],
    [!proved || gap === 0, 'said to be proved, with a gap'],
    [utilisation >= 0 && utilisation <= 1, `utilisation ${utilisation}`],
  );
}
