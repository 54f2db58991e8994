import type { At, Piece } from './read-svg.ts';

const share = (p: At, q: At, t: number): At => ({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });

/** Points along a piece of a path, its end left out: its start alone for a line (de Casteljau). */
export function pointsAlong(piece: Piece, steps = 32): readonly At[] {
  if (piece.length === 2) return [piece[0]];
  return Array.from({ length: steps }, (_, step) => {
    let points: readonly At[] = piece;
    while (points.length > 1)
      points = points.slice(1).map((q, index) => share(points[index] ?? q, q, step / steps));
    return points[0] ?? piece[0];
  });
}
