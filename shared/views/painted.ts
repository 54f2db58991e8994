import type { CreasePattern } from '../creases/crease-pattern.ts';
import { facesAcross } from '../folding/faces-across.ts';
import type { FlatForm } from '../folding/fold-in-steps.ts';
import { platesOf } from '../folding/plates.ts';
import type { Side } from '../folding/regions.ts';
import { type Point, turnsOver } from '../geometry/plane.ts';
import type { Knockouts } from '../knockouts/placed.ts';
import { edgeLeft, openingBoxes, openingEdges, polygonsOf, type SheetLine } from './cut-open.ts';
import type { FaceMark, LineKind, Mark, PagePoint, Paper } from './picture.ts';

/** A face of the sheet as it is painted on the page. */
export interface Painted {
  readonly index: number;
  readonly part: string;
  readonly paper: Paper;
  /** The first face of those that it runs on into flat, where it does. */
  readonly plate?: number;
  /** A corner that was folded over: it lies a quarter turn off the sheet. */
  readonly corner: boolean;
  readonly outline: readonly PagePoint[];
  /** What knockouts leave of it, as polygons with counters among them; absent where they leave all of it. */
  readonly left?: readonly (readonly PagePoint[])[];
  /** Boxes around its openings, which nothing is written over. */
  readonly openings?: readonly (readonly PagePoint[])[];
  /** See {@link FaceMark.sheet}. */
  readonly sheet: NonNullable<FaceMark['sheet']>;
  /** Where its print's up points on the page; shorter than 1 where it is seen at a slant. */
  readonly up: PagePoint;
  readonly lines: readonly { readonly line: LineKind; readonly from: PagePoint; readonly to: PagePoint }[];
}

/** A way of looking at a form: what is painted over what, and where the page shows a point of a face. */
export interface Look {
  /** Indices of the faces to paint, from the farthest to the nearest. */
  readonly order: readonly number[];
  readonly sideOf: (face: number) => Side;
  /** @param point on the sheet, in nanometres */
  readonly at: (face: number, point: Point) => PagePoint;
  /** Whether two faces that share a crease lie in one plane, side by side. */
  readonly level: (one: number, other: number) => boolean;
  /** Page millimetres for one real millimetre. */
  readonly ratio: number;
}

/** Where each print's up points on the sheet. */
export interface Ups {
  readonly outside: Point;
  readonly inside: Point;
}

/** Whether an edge of the paper is where the fronts of the pockets meet; ends on the sheet, by face. */
export type IsSeam = (face: number, from: Point, to: Point) => boolean;

/** Every face of a form as a look shows it, the farthest first, with what knockouts leave of it. */
export function paint(
  pattern: CreasePattern,
  { lies }: Pick<FlatForm, 'lies'>,
  look: Look,
  ups: Ups,
  isSeam: IsSeam = () => false,
  knockouts?: Pick<Knockouts, 'openings' | 'facesLeft'>,
): readonly Painted[] {
  const { vertices, faces } = pattern;
  const neighbours = facesAcross(pattern);
  const plates = platesOf(neighbours);
  return look.order.flatMap((index) => {
    const [face, motion] = [faces[index], lies[index]];
    if (!face || !motion) return [];
    const paper: Paper = (look.sideOf(index) === 'inside') === turnsOver(motion) ? 'outside' : 'inside';
    const corners = face.vertices.flatMap((corner) => vertices[corner] ?? []);
    const outline = corners.map((corner) => look.at(index, corner));
    const rest = knockouts?.facesLeft.get(index);
    const polygons = rest && polygonsOf(rest);
    const shown = ([from, to]: SheetLine) => ({ from: look.at(index, from), to: look.at(index, to) });
    const edges = face.vertices.flatMap((corner, at) => {
      const next = (at + 1) % face.vertices.length;
      const [from, to, p, q] = [outline[at], outline[next], corners[at], corners[next]];
      if (!from || !to || !p || !q) return [];
      const across = neighbours[index]?.find((one) => one.from === corner && one.to === face.vertices[next]);
      if (across?.edge.letter === 'F') return [];
      const level = across !== undefined && look.level(index, across.other);
      const line: LineKind = level ? 'score' : !across && isSeam(index, p, q) ? 'seam' : 'edge';
      if (!rest || !knockouts) return [{ line, from, to }];
      return edgeLeft(p, q, knockouts.openings).map((part) => ({ line, ...shown(part) }));
    });
    const openings = polygons ? openingEdges(polygons, corners) : [];
    const lines = [...edges, ...openings.map((side) => ({ line: 'edge' as const, ...shown(side) }))];
    return [
      {
        index,
        part: face.panel,
        paper,
        ...(plates[index]?.length === 1 ? {} : { plate: plates[index]?.[0] ?? index }),
        corner: Math.abs(motion.a) < 0.5,
        sheet: [look.at(index, origin), look.at(index, rightOfIt), look.at(index, belowIt)],
        outline,
        ...(polygons && knockouts
          ? {
              left: polygons.map((polygon) => polygon.map((point) => look.at(index, point))),
              openings: openingBoxes(knockouts.openings, corners).map((box) =>
                box.map((point) => look.at(index, point)),
              ),
            }
          : {}),
        lines,
        up: upOf(look, index, corners[0], ups[paper]),
      },
    ];
  });
}

const NM_PER_MM = 1e6;
const origin: Point = { x: 0, y: 0 };
const rightOfIt: Point = { x: NM_PER_MM, y: 0 };
const belowIt: Point = { x: 0, y: NM_PER_MM };

function upOf(look: Look, face: number, corner: Point | undefined, up: Point): PagePoint {
  const start = corner ?? { x: 0, y: 0 };
  const from = look.at(face, start);
  const to = look.at(face, { x: start.x + up.x * NM_PER_MM, y: start.y + up.y * NM_PER_MM });
  return { x: (to.x - from.x) / look.ratio, y: (to.y - from.y) / look.ratio };
}

/** The marks for a painted face: its paper, then its lines, so that what lies nearer covers both. */
export function marksOf({ part, paper, sheet, outline, left, lines }: Painted): readonly Mark[] {
  const kinds = ['score', 'edge', 'seam'] as const;
  return [
    { kind: 'face', part, paper, sheet, outline, ...(left ? { left } : {}) },
    ...kinds.flatMap((line): Mark[] => {
      const own = lines.filter((each) => each.line === line).map(({ from, to }) => [from, to]);
      return own.length === 0 ? [] : [{ kind: 'line', line, lines: own }];
    }),
  ];
}
