import type { Path64 } from 'clipper2-ts';
import { type Control, goesOn, type Steps, spend } from './control.ts';
import { type Job, mayLie, type Room } from './job.ts';
import type { NestPiece, NestSheet, NestSpec } from './nest-spec.ts';
import type { Turn } from './nesting.ts';
import { freePositions, movedTo, noFit, type Position } from './no-fit.ts';
import { keepOut, rectangleOutline, STEP, turnedOutline } from './outline.ts';
import type { PlacedPattern, PlacedPlan } from './placed-plan.ts';
import type { Random } from './random.ts';

/** A piece in one of its turns, in steps. */
interface Stance {
  readonly box: number;
  readonly turn: Turn;
  readonly width: number;
  readonly height: number;
  readonly keepOut: Path64;
}

interface Lying extends Position {
  readonly stance: Stance;
}

/** Orders that are tried after the first without finding a better plan. */
const patience = 8;

/** More copies than this on one sheet are not nested by their outlines: too much time for each. */
const mostOnSheet = 150;

const turnsOf: Readonly<Record<NestPiece['turns'], readonly Turn[]>> = {
  none: [0],
  half: [0, 180],
  quarter: [0, 90, 180, 270],
};

/**
 * Nests pieces by their own outlines, sheet by sheet: each piece goes where its lower edge lies highest, then furthest to
 * the left, in any of its turns, without overlap of outlines. The first order is by area, others change it by chance.
 * @param known a plan to be beaten
 */
export function* nestOutlines(
  spec: NestSpec,
  job: Job,
  known: PlacedPlan,
  random: Random,
  control: Control,
  better: (one: PlacedPlan, other: PlacedPlan) => boolean,
): Steps<PlacedPlan> {
  const stances = job.pieceOf.map((piece, box) => stancesOf(spec.pieces[piece] as NestPiece, box, spec.gap));
  const sizes = stances.map(([first]) => (first === undefined ? 0 : first.width * first.height));
  const noFits = noFitCache();
  let best = known;
  for (let turn = 0, idle = 0; idle < patience && goesOn(control); turn++, idle++) {
    const stirred = sizes.map((size) => (turn === 0 ? size : size * (1 + 0.8 * (random.next() - 0.5))));
    const order = sizes
      .map((_, box) => box)
      .sort((one, other) => (stirred[other] ?? 0) - (stirred[one] ?? 0));
    const plan = yield* inOrder(spec, job, order, stances, noFits, control);
    if (plan === undefined) break;
    if (!better(plan, best)) continue;
    best = plan;
    idle = -1;
    control.sheets = best.patterns.reduce((sum, { times }) => sum + times, 0);
  }
  return best;
}

function stancesOf(piece: NestPiece, box: number, gap: number): readonly Stance[] {
  const { width, height, turns } = piece;
  const outline = piece.outline ?? rectangleOutline(width, height);
  // a rectangle looks alike after half a turn
  const distinct = turnsOf[turns].filter((turn) => piece.outline !== undefined || turn < 180);
  return distinct.map((turn) => {
    const [across, along] = turn % 180 === 0 ? [width, height] : [height, width];
    return {
      box,
      turn,
      width: Math.ceil(across / STEP),
      height: Math.ceil(along / STEP),
      keepOut: keepOut(turnedOutline(outline, width, height, turn), gap),
    };
  });
}

type NoFits = (other: Stance, piece: Stance) => ReturnType<typeof noFit>;

function noFitCache(): NoFits {
  const known = new Map<string, ReturnType<typeof noFit>>();
  return (other, piece) => {
    const key = `${other.box} ${other.turn} ${piece.box} ${piece.turn}`;
    const paths = known.get(key) ?? noFit(other.keepOut, piece.keepOut);
    known.set(key, paths);
    return paths;
  };
}

/** @returns undefined when it was stopped */
function* inOrder(
  spec: NestSpec,
  job: Job,
  order: readonly number[],
  stances: readonly (readonly Stance[])[],
  noFits: NoFits,
  control: Control,
): Steps<PlacedPlan | undefined> {
  const left = job.boxes.map(({ count }) => count);
  const stock = new Map(job.stock);
  const patterns: PlacedPattern[] = [];
  const rooms = job.rooms
    .map((_, index) => index)
    .sort((one, other) => (job.rooms[other]?.area ?? 0) - (job.rooms[one]?.area ?? 0) || one - other);
  for (;;) {
    const room = rooms.find(
      (each) =>
        (stock.get(job.rooms[each]?.sheet ?? -1) ?? 0) > 0 &&
        left.some(
          (count, box) => count > 0 && liesIn(spec, job.rooms[each] as Room, job, stances[box] ?? []),
        ),
    );
    if (room === undefined) break;
    const lying = yield* oneSheet(spec, job, job.rooms[room] as Room, left, order, stances, noFits, control);
    if (lying === undefined) return undefined;
    if (lying.length === 0) break;
    const { sheet } = job.rooms[room] as Room;
    const used = Map.groupBy(lying, ({ stance }) => stance.box);
    const repeats = Math.min(...[...used].map(([box, list]) => Math.floor((left[box] ?? 0) / list.length)));
    const times = Math.min(repeats, stock.get(sheet) ?? 0);
    for (const [box, list] of used) left[box] = (left[box] ?? 0) - times * list.length;
    stock.set(sheet, (stock.get(sheet) ?? 0) - times);
    patterns.push(patternOf(spec, job, room, lying, times));
  }
  return { patterns, left };
}

/** The largest positions in a room, in steps. */
function extent(spec: NestSpec, { sheet }: Room) {
  const { width, height, margin } = spec.sheets[sheet] as NestSheet;
  return { width: Math.floor((width - 2 * margin) / STEP), height: Math.floor((height - 2 * margin) / STEP) };
}

function liesIn(spec: NestSpec, room: Room, job: Job, list: readonly Stance[]): boolean {
  const { width, height } = extent(spec, room);
  return list.some(
    (stance) => mayLie(job, room, stance.box) && stance.width <= width && stance.height <= height,
  );
}

/** Fills one sheet with copies that are left, each box as often as it goes. @returns undefined when it was stopped */
function* oneSheet(
  spec: NestSpec,
  job: Job,
  room: Room,
  left: readonly number[],
  order: readonly number[],
  stances: readonly (readonly Stance[])[],
  noFits: NoFits,
  control: Control,
): Steps<readonly Lying[] | undefined> {
  const { width, height } = extent(spec, room);
  const lying: Lying[] = [];
  for (const box of order) {
    if (!mayLie(job, room, box)) continue;
    for (let copies = left[box] ?? 0; copies > 0 && lying.length < mostOnSheet; copies--) {
      let best: Lying | undefined;
      for (const stance of stances[box] ?? []) {
        const forbidden = lying.flatMap((other) => movedTo(noFits(other.stance, stance), other));
        for (const { x, y } of freePositions(width - stance.width, height - stance.height, forbidden))
          if (best === undefined || isLower(x, y, stance, best)) best = { x, y, stance };
      }
      if (!(yield* spend(control, 1)) && control.stop !== undefined) return undefined;
      if (best === undefined) break;
      lying.push(best);
    }
  }
  return lying;
}

const isLower = (x: number, y: number, stance: Stance, best: Lying): boolean => {
  const [one, other] = [y + stance.height, best.y + best.stance.height];
  return one < other || (one === other && x + stance.width < best.x + best.stance.width);
};

function patternOf(
  spec: NestSpec,
  job: Job,
  room: number,
  lying: readonly Lying[],
  times: number,
): PlacedPattern {
  const margin = spec.sheets[job.rooms[room]?.sheet ?? -1]?.margin ?? 0;
  return {
    room,
    times,
    placed: lying.map(({ x, y, stance }) => {
      const piece = job.pieceOf[stance.box] ?? 0;
      const { width, height } = spec.pieces[piece] as NestPiece;
      const [across, along] = stance.turn % 180 === 0 ? [width, height] : [height, width];
      return {
        piece,
        x: x * STEP + margin,
        y: y * STEP + margin,
        width: across,
        height: along,
        turn: stance.turn,
      };
    }),
  };
}
