import type { FoldStep } from '../creases/fold-program.ts';
import type { FlatFace } from '../folding/flat-faces.ts';
import { distanceFrom, move, type Point, reflection } from '../geometry/plane.ts';
import type { FlatLook } from './flat-look.ts';
import { bowed, lengthened, partWay, stretched } from './motion-arrow.ts';
import type { Mark } from './picture.ts';

/** The fold line is drawn this far beyond the paper, in millimetres. */
const beyond = 3;

/** The line to fold along, and an arrow that shows which way the part moves. */
export function foldMarks(step: FoldStep, every: readonly FlatFace[], look: FlatLook): readonly Mark[] {
  const faces = step.only ? every.filter(({ panel }) => step.only?.includes(panel)) : every;
  const ends = endsOnPaper(step, faces);
  const moving = middleOfMoving(step, faces);
  if (!ends || !moving) return [];
  const line = stretched(look.onPage(ends[0]), look.onPage(ends[1]), beyond);
  const start = look.onPage(moving);
  const landing = look.onPage(move(reflection(step.line), moving));
  // bent to a right angle, the part ends above its line
  const [from, to] = lengthened(start, step.angle === 90 ? partWay(start, landing, 0.45) : landing);
  return [
    { kind: 'line', line: step.direction === 'toward' ? 'valley' : 'mountain', lines: [line] },
    { kind: 'arrow', arrow: step.direction, from, to, by: bowed(from, to) },
  ];
}

/** Nanometres within which a corner lies on a line. */
const onLine = 1000;

/** Where the fold's line enters and leaves the paper as it lies: the faces are already divided along it. */
function endsOnPaper({ line }: FoldStep, faces: readonly FlatFace[]): readonly [Point, Point] | undefined {
  const along = ({ x, y }: Point): number =>
    (x - line.from.x) * (line.to.x - line.from.x) + (y - line.from.y) * (line.to.y - line.from.y);
  const creases = faces.flatMap(({ corners }) =>
    corners.flatMap((p, index) => {
      const q = corners[(index + 1) % corners.length] ?? p;
      const lies = [p, q].every((corner) => Math.abs(distanceFrom(line, corner)) < onLine);
      return lies ? [p, q] : [];
    }),
  );
  const sorted = creases.toSorted((one, other) => along(one) - along(other));
  const [first, last] = [sorted[0], sorted.at(-1)];
  return first && last ? [first, last] : undefined;
}

/** The middle of the area that moves. */
function middleOfMoving({ line, moving }: FoldStep, faces: readonly FlatFace[]): Point | undefined {
  const side = Math.sign(distanceFrom(line, moving));
  let [x, y, sum] = [0, 0, 0];
  for (const { corners } of faces) {
    const middle = meanOf(corners);
    if (Math.sign(distanceFrom(line, middle)) !== side) continue;
    const area = areaOf(corners);
    x += middle.x * area;
    y += middle.y * area;
    sum += area;
  }
  return sum === 0 ? undefined : { x: x / sum, y: y / sum };
}

const meanOf = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
  y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
});

function areaOf(corners: readonly Point[]): number {
  let twice = 0;
  for (const [index, p] of corners.entries()) {
    const q = corners[(index + 1) % corners.length] ?? p;
    twice += p.x * q.y - q.x * p.y;
  }
  return Math.abs(twice) / 2;
}
