import { overlap } from '../fold-format/face-orders.ts';
import type { Neighbours } from '../folding/faces-across.ts';
import { facesAcross } from '../folding/faces-across.ts';
import { clockwise, type FlatFace, TOUCH } from '../folding/flat-faces.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { Side } from '../folding/regions.ts';
import { lieLevel } from '../views/lie-level.ts';

/** The layers of a flat form, looked through as knockouts need it. */
export interface Layers {
  readonly faces: readonly FlatFace[];
  readonly neighbours: Neighbours;
  /** For each face the numbers of its corners' vertices, in the order of its `corners`. */
  readonly corners: readonly (readonly number[])[];
}

/** How a face ends at one of its edges: at the paper's border, at a fold, or it goes on level beyond a crease. */
export type EdgeKind = 'border' | 'fold' | 'level';

export const layersOf = ({ pattern, proof }: Folded): Layers => ({
  faces: proof.faces,
  neighbours: facesAcross(pattern),
  corners: pattern.faces.map(({ vertices }) => vertices),
});

/** For each corner of a face, in the order of its `corners`, the kind of the edge from it to the next. */
export function edgeKinds({ faces, neighbours, corners }: Layers, face: FlatFace): readonly EdgeKind[] {
  return (corners[face.index] ?? []).map((from) => {
    const across = (neighbours[face.index] ?? []).find((each) => each.from === from);
    const other = across && faces[across.other];
    if (!other) return 'border';
    return lieLevel(face.lies, other.lies) ? 'level' : 'fold';
  });
}

/** Of some faces those that lie over one of them for somebody who looks from a side. */
export const coversOf = (
  { faces }: Layers,
  among: ReadonlySet<number>,
  face: FlatFace,
  side: Side,
): readonly FlatFace[] =>
  faces.filter(
    (other) =>
      among.has(other.index) &&
      (side === 'inside' ? other.height > face.height : other.height < face.height) &&
      overlap(face, other),
  );

/** Faces in groups that lie level and side by side, so that what crosses from one to the next stays whole. */
export function levelGroups(
  { faces, neighbours }: Layers,
  chosen: ReadonlySet<number>,
): readonly FlatFace[][] {
  const left = new Set(chosen);
  const groups: FlatFace[][] = [];
  for (const start of chosen) {
    if (!left.delete(start)) continue;
    const queue = [start];
    for (const index of queue) {
      for (const { other } of neighbours[index] ?? []) {
        const [here, there] = [faces[index], faces[other]];
        if (!left.has(other) || !here || !there || !lieLevel(here.lies, there.lies)) continue;
        left.delete(other);
        queue.push(other);
      }
    }
    groups.push(queue.flatMap((index) => faces[index] ?? []));
  }
  return groups;
}

/** Whether an edge of one face runs along the line of some edge of another. */
export function isAlong(p: { x: number; y: number }, q: { x: number; y: number }, other: FlatFace): boolean {
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  const off = (r: { x: number; y: number }): boolean =>
    Math.abs((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)) > TOUCH * length;
  const corners = clockwise(other);
  return corners.some((from, index) => !off(from) && !off(corners[(index + 1) % corners.length] ?? from));
}
