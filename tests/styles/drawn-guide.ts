import { glueGuide } from '../../shared/drawing/glue-guide.ts';
import { covers, type FlatFace } from '../../shared/folding/flat-faces.ts';
import type { Folded } from '../../shared/folding/proof-of.ts';
import { move, type Point } from '../../shared/geometry/plane.ts';
import { inMm } from '../../shared/lengths/show-length.ts';
import type { At, Piece, ReadSvg } from '../support/read-svg.ts';
import { everyGroup, pathsIn, piecesOf } from '../support/read-svg.ts';

/*
 * What the guide of every drawing keeps, whatever was folded: it shows the strips that the maker is told to glue and
 * nothing else, and glue stays as far from edges and scores as makers keep it (common practice: 1.5 mm and 2 mm).
 */

const toEdge = 1.5;
const toScore = 2;
const EXACT = 0.003;

const groupsNamed = (read: ReadSvg, name: string) => everyGroup(read.groups).filter(({ id }) => id === name);

/** Whether two sets of corners are the same, as far as three decimals tell. */
const same = (some: readonly At[], others: readonly At[]): boolean =>
  [
    [some, others],
    [others, some],
  ].every(([all = [], among = []]) =>
    all.every((p) => among.some((q) => Math.hypot(p.x - q.x, p.y - q.y) < EXACT)),
  );

interface Strip {
  readonly face: string;
  readonly corners: readonly At[];
}

/** The strips that the program glues, with their corners in millimetres as an unmirrored, unturned drawing has them. */
const stripsOf = ({ program }: Folded): readonly Strip[] =>
  program.steps.flatMap((step) =>
    step.kind === 'glue'
      ? step.strips.map(({ face, left, right, top, bottom }) => ({
          face,
          corners: [left, right].flatMap((x) => [top, bottom].map((y) => ({ x: inMm(x), y: inMm(y) }))),
        }))
      : [],
  );

/** Everything that a drawing's guide gets wrong, in words; the drawing lies inside up and is not turned. */
export function guideFaults(folded: Folded, read: ReadSvg): readonly string[] {
  const strips = stripsOf(folded);
  const faults: string[] = [];
  for (const face of ['inside', 'outside']) {
    const drawn = groupsNamed(read, `guide-glue-${face}`).flatMap((group) => pathsIn(group));
    const shown = drawn.map(({ subpaths }) => subpaths.flatMap(({ pieces }) => pieces.flat()));
    const told = strips.filter((strip) => strip.face === face).map(({ corners }) => corners);
    if (shown.length !== told.length || !told.every((strip) => shown.some((each) => same(each, strip))))
      faults.push(`${shown.length} strips are drawn on the ${face} face, ${told.length} are glued there`);
  }
  const lines = everyGroup(read.groups)
    .filter(({ id }) => id.startsWith('guide-'))
    .flatMap((group) => piecesOf(pathsIn(group)));
  if (lines.length > 0 !== strips.length > 0) faults.push('the guide and the glue are not there together');
  const { vertices, edges } = folded.pattern;
  for (const { ends, letter } of edges) {
    if (letter === 'F') continue;
    const [p, q] = ends.map((end) => vertices[end]);
    if (!p || !q) continue;
    const edge: Piece = [inPoint(p), inPoint(q)];
    const least = letter === 'B' ? toEdge : toScore;
    const near = lines.find((line) => apart(line, edge) < least - EXACT);
    if (near) faults.push(`${JSON.stringify(near)} comes too near to ${JSON.stringify(edge)}`);
  }
  return [...faults, ...zoneFaults(folded)];
}

const inPoint = ({ x, y }: Point): At => ({ x: inMm(x), y: inMm(y) });

/** Every strip meets bare paper when the piece is folded flat, and lies within a room that its glue must not leave. */
function zoneFaults(folded: Folded): readonly string[] {
  const zones = glueGuide(folded);
  const cornersOf = ({ contours }: (typeof zones)[number]) =>
    contours.flatMap(({ start, stretches }) => [start, ...stretches.map(({ to }) => to)]);
  const middleOf = (zone: (typeof zones)[number]): Point => {
    const [xs, ys] = [cornersOf(zone).map(({ x }) => x), cornersOf(zone).map(({ y }) => y)];
    return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
  };
  const faceUnder = (zone: (typeof zones)[number], panel: string): FlatFace | undefined =>
    folded.proof.faces.find((face) => {
      const there = move(face.lies, middleOf(zone));
      return face.panel === panel && covers(face, there.x, there.y);
    });
  const told = folded.program.steps.flatMap((step) => (step.kind === 'glue' ? step.strips : []));
  return zones
    .filter(({ kind }) => kind === 'glue')
    .flatMap((strip, index) => {
      const bare = zones.find(({ id }) => id === `${strip.id}-bare`);
      const { panel = '', to = '' } = told[index] ?? {};
      const [owner, other] = [faceUnder(strip, panel), bare && faceUnder(bare, to)];
      if (!bare || !owner || !other) return [`${strip.id} or what it meets is not on its panel`];
      const [p, q] = [move(owner.lies, middleOf(strip)), move(other.lies, middleOf(bare))];
      // two layers of which one is turned over meet with the same face of the paper
      const meets =
        Math.hypot(p.x - q.x, p.y - q.y) < 10 &&
        (bare.face === strip.face) === (owner.turned !== other.turned);
      const held = zones
        .filter(({ kind, face }) => kind === 'keepOut' && face === strip.face)
        .some((room) => cornersOf(strip).every((corner) => within(corner, cornersOf(room))));
      return [
        ...(meets ? [] : [`${strip.id} does not meet ${bare?.id}`]),
        ...(held ? [] : [`${strip.id} leaves its room`]),
      ];
    });
}

/** Whether a point lies in a convex polygon, or within a micrometre of it. */
function within({ x, y }: Point, polygon: readonly Point[]): boolean {
  const depths = polygon.map((p, index) => {
    const q = polygon[(index + 1) % polygon.length] ?? p;
    const length = Math.hypot(q.x - p.x, q.y - p.y);
    return length === 0 ? 0 : ((q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x)) / length;
  });
  return depths.every((depth) => depth > -1000) || depths.every((depth) => depth < 1000);
}

/** Millimetres between two straight pieces; 0 where they cross. */
function apart(one: Piece, other: Piece): number {
  const [p, q] = [one[0], one[1]];
  const [r, s] = [other[0], other[1]];
  const side = (a: At, b: At, c: At) => Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  if (side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0) return 0;
  return Math.min(fromPiece(p, r, s), fromPiece(q, r, s), fromPiece(r, p, q), fromPiece(s, p, q));
}

function fromPiece(c: At, a: At, b: At): number {
  const square = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  const share = square === 0 ? 0 : ((c.x - a.x) * (b.x - a.x) + (c.y - a.y) * (b.y - a.y)) / square;
  const at = Math.min(1, Math.max(0, share));
  return Math.hypot(c.x - a.x - at * (b.x - a.x), c.y - a.y - at * (b.y - a.y));
}
