import { inMm } from '../../shared/lengths/show-length.ts';
import type { Plan } from '../../shared/solver/plan.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { blankOf, type Sleeve } from './expected-lines.ts';
import {
  type At,
  everyGroup,
  type Piece,
  piecesOf,
  type ReadGroup,
  type ReadSvg,
  readSvg,
} from './read-svg.ts';
import { sleeveSpec } from './sleeve-spec.ts';

/** One spec with its plan, its drawing, and what the reader makes of that. */
export interface Drawn {
  readonly raw: unknown;
  readonly plan: Plan;
  readonly svg: string;
  readonly read: ReadSvg;
}

/** Draws a spec as a caller sends it. Undefined where no arrangement can be folded. */
export function draw(raw: unknown): Drawn | undefined {
  const spec = folderSpec.parse(raw);
  const solution = solveFolder(spec);
  if (!solution.ok) return undefined;
  const svg = svgOfFolder(spec);
  return { raw, plan: solution.plan, svg, read: readSvg(svg) };
}

/** Draws a spec that is known to fold. */
export function mustDraw(raw: unknown): Drawn {
  const drawn = draw(raw);
  if (!drawn) throw new Error(`nothing can be folded for ${JSON.stringify(raw)}`);
  return drawn;
}

/** A plan's dimensions in millimetres. */
export function sleeveOf(plan: Plan): Sleeve {
  const { dimensions } = plan;
  const spec = sleeveSpec(plan);
  const take = (name: string): number => {
    const value = dimensions[name];
    if (value === undefined) throw new Error(`the plan has no ${name}`);
    return inMm(value);
  };
  return {
    width: take('panel.width'),
    height: take('panel.height'),
    spine: take('spine'),
    hem: take('hem'),
    topFlap: take('topFlap'),
    bottomFlap: take('bottomFlap'),
    cornersFolded: spec.corners !== 'mitred',
    hemsOut: spec.hem?.turn !== 'in',
  };
}

/** How a point of the drawing goes back to the blank: the mirror and the quarter turn undone. */
export function backToBlank({ plan }: Drawn): (p: At) => At {
  const { width, height } = blankOf(sleeveOf(plan));
  const turned = plan.arrangement.drawingTurned;
  const across = turned ? height : width;
  const mirrored = plan.spec.convention?.sheetLies === 'outside-up';
  return (p) => {
    const x = mirrored ? across - p.x : p.x;
    // a quarter turn clockwise took (x, y) to (height − y, x)
    return turned ? { x: p.y, y: height - x } : { x, y: p.y };
  };
}

/** The group of an id, wherever it is. */
export const groupNamed = (read: ReadSvg, id: string): ReadGroup | undefined =>
  everyGroup(read.groups).find((group) => group.id === id);

/** The pieces of one group's paths, on the blank. */
export function onBlank(drawn: Drawn, id: string): readonly Piece[] {
  const back = backToBlank(drawn);
  return piecesOf(groupNamed(drawn.read, id)?.paths ?? []).map(
    (piece) => piece.map(back) as unknown as Piece,
  );
}

/** The length of a line; of a curve that of its control polygon, which is no shorter. */
export const lengthOf = (piece: Piece): number =>
  piece.slice(1).reduce((sum, q, index) => {
    const p = piece[index] ?? q;
    return sum + Math.hypot(q.x - p.x, q.y - p.y);
  }, 0);
