import { isCrease } from '../../shared/creases/crease-pattern.ts';
import { locksOf } from '../../shared/creases/fold-program.ts';
import type { Folded } from '../../shared/folding/proof-of.ts';
import { inMm } from '../../shared/lengths/show-length.ts';
import type { At, Piece, ReadGroup, ReadSvg } from '../support/read-svg.ts';
import { everyGroup, pathsIn, piecesOf } from '../support/read-svg.ts';

/*
 * What every drawing keeps, whatever was folded, read from the file by a reader of its own and held against the crease
 * pattern. Millimetres.
 */

/** Three decimals allow half of this, and a turn or a mirror as much again. */
const EXACT = 0.0021;

const lengthOf = ([from, to]: Piece): number => Math.hypot(to.x - from.x, to.y - from.y);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const groupNamed = (read: ReadSvg, id: string): ReadGroup | undefined =>
  everyGroup(read.groups).find((group) => group.id === id);

const piecesIn = (read: ReadSvg, id: string): readonly Piece[] => {
  const group = groupNamed(read, id);
  return group ? piecesOf(pathsIn(group)) : [];
};

/** Square millimetres inside closed pieces, by the shoelace formula. */
const areaOf = (points: readonly At[]): number =>
  Math.abs(
    sum(
      points.map((p, index) => {
        const q = points[(index + 1) % points.length] ?? p;
        return p.x * q.y - q.x * p.y;
      }),
    ),
  ) / 2;

const closedAreas = (read: ReadSvg, id: string): readonly number[] =>
  (groupNamed(read, id)?.paths ?? []).flatMap(({ subpaths }) =>
    subpaths.map(({ pieces }) => areaOf(pieces.map(([from]) => from))),
  );

/** Square millimetres of paper: all faces of the crease pattern. */
const paperOf = ({ pattern }: Folded): number =>
  sum(
    pattern.faces.map(({ vertices }) =>
      areaOf(
        vertices.flatMap((vertex) => {
          const point = pattern.vertices[vertex];
          return point ? [{ x: inMm(point.x), y: inMm(point.y) }] : [];
        }),
      ),
    ),
  );

const scoreLength = ({ pattern }: Folded, letter: 'V' | 'M'): number =>
  sum(
    pattern.edges
      .filter((edge) => isCrease(edge) && edge.letter === letter)
      .map(({ ends }) => {
        const [p, q] = ends.map((end) => pattern.vertices[end]);
        return p && q ? inMm(Math.hypot(p.x - q.x, p.y - q.y)) : Number.NaN;
      }),
  );

/** Two pieces on one line that share more than an end, in words. */
export function overlapping(pieces: readonly Piece[]): readonly string[] {
  return pieces.flatMap((one, index) =>
    pieces.slice(index + 1).flatMap((other) => {
      const [p, q] = [one[0], one[1]];
      const length = lengthOf(one);
      if (length === 0 || one.length !== 2 || other.length !== 2) return [];
      const [ux, uy] = [(q.x - p.x) / length, (q.y - p.y) / length];
      const aside = (r: At) => Math.abs((r.x - p.x) * uy - (r.y - p.y) * ux);
      const along = (r: At) => (r.x - p.x) * ux + (r.y - p.y) * uy;
      if (aside(other[0]) > EXACT || aside(other[1]) > EXACT) return [];
      const [from, to] = [along(other[0]), along(other[1])];
      const shared = Math.min(length, Math.max(from, to)) - Math.max(0, Math.min(from, to));
      return shared > 2 * EXACT ? [`${JSON.stringify(one)} and ${JSON.stringify(other)}`] : [];
    }),
  );
}

/** Everything that a drawing gets wrong, in words. */
export function drawingFaults(folded: Folded, read: ReadSvg): readonly string[] {
  const { plan } = folded;
  const { width, height } = plan.blank;
  const [across, down] = plan.arrangement.drawingTurned ? [height, width] : [width, height];
  const faults: string[] = [];
  const fault = (holds: boolean, what: string): void => {
    if (!holds) faults.push(what);
  };
  fault(
    Math.abs(read.width - inMm(across)) < 1e-4 && Math.abs(read.height - inMm(down)) < 1e-4,
    `the root is ${read.width} by ${read.height}`,
  );
  const scores = (['V', 'M'] as const).flatMap((letter) => {
    const pieces = piecesIn(read, letter === 'V' ? 'score-valley' : 'score-mountain');
    const [drawn, planned] = [sum(pieces.map(lengthOf)), scoreLength(folded, letter)];
    fault(
      Math.abs(drawn - planned) < 0.01 + 0.002 * pieces.length,
      `scores ${letter} are ${drawn} mm long instead of ${planned}`,
    );
    return pieces;
  });
  const cuts = piecesIn(read, 'cut');
  const outline = plan.spec.convention?.outline ?? 'auto';
  const whole = outline === 'never' || (outline === 'auto' && plan.wholeSheet);
  // the outline encloses the blank; what comes off is the rest of the rectangle around it
  const paper = paperOf(folded);
  const expected = whole ? inMm(width) * inMm(height) - paper : paper;
  const cutAway = sum(closedAreas(read, 'cut'));
  fault(
    Math.abs(cutAway - expected) < 0.5 + 0.002 * (inMm(width) + inMm(height)),
    `cuts enclose ${cutAway} mm² instead of ${expected}`,
  );
  const slots = locksOf(folded.program).map(
    ({ slot }) => inMm(slot.right - slot.left) * inMm(slot.bottom - slot.top),
  );
  const [knockedOut, slotted] = [sum(closedAreas(read, 'knockout')), sum(slots)];
  fault(
    Math.abs(knockedOut - slotted) < 0.1 * slots.length + 1e-6,
    `knockouts enclose ${knockedOut} mm² instead of the slots' ${slotted}`,
  );
  const every = [...scores, ...cuts, ...piecesIn(read, 'knockout')];
  for (const pair of overlapping(every)) faults.push(`lines lie on each other: ${pair}`);
  fault(
    every.every((piece) => lengthOf(piece) > 0),
    'a piece has no length',
  );
  const inView = ({ x, y }: At) =>
    x > -EXACT && y > -EXACT && x < read.width + EXACT && y < read.height + EXACT;
  fault(every.flat().every(inView), 'a piece leaves the view');
  fault(
    everyGroup(read.groups)
      .filter(({ id }) => id === 'cut')
      .flatMap(pathsIn)
      .every(({ subpaths }) => subpaths.every(({ closed }) => closed)),
    'a cut is open',
  );
  fault(
    everyGroup(read.groups)
      .filter(({ id }) => id.startsWith('score'))
      .flatMap(pathsIn)
      .every(({ subpaths }) => subpaths.every(({ closed }) => !closed)),
    'a score is closed',
  );
  return faults;
}
