import type { CreasePattern, Edge } from '../creases/crease-pattern.ts';

/** A rule that a vertex inside the sheet breaks. */
export interface VertexFault {
  readonly rule: 'Kawasaki' | 'Maekawa';
  readonly vertex: number;
  readonly message: string;
}

/** Alternate sums may differ from 180° by this many degrees. */
const ANGLE_SLIP = 1e-6;

/**
 * The two theorems that every vertex inside a flat fold keeps: alternate sector angles sum to 180°
 * (Kawasaki and Justin), mountains and valleys differ by two (Maekawa and Justin).
 * Source: Kawasaki 1989; Justin 1986; Hull, "The combinatorics of flat folds: a survey".
 */
export function vertexFaults(pattern: CreasePattern): readonly VertexFault[] {
  const around = edgesAround(pattern);
  return pattern.vertices.flatMap((_, vertex) => {
    const edges = around[vertex] ?? [];
    if (edges.length === 0 || edges.some(({ letter }) => letter === 'B')) return [];
    return [...kawasaki(pattern, vertex, edges), ...maekawa(vertex, edges)];
  });
}

function edgesAround({ vertices, edges }: CreasePattern): readonly (readonly Edge[])[] {
  const around: Edge[][] = vertices.map(() => []);
  for (const edge of edges) {
    // where pieces run on flat nothing is folded
    if (edge.letter === 'F') continue;
    around[edge.ends[0]]?.push(edge);
    around[edge.ends[1]]?.push(edge);
  }
  return around;
}

function kawasaki({ vertices }: CreasePattern, vertex: number, edges: readonly Edge[]): VertexFault[] {
  const centre = vertices[vertex];
  if (!centre) return [];
  const directions = edges
    .map(({ ends }) => vertices[ends[0] === vertex ? ends[1] : ends[0]] ?? centre)
    .map((end) => (Math.atan2(end.y - centre.y, end.x - centre.x) * 180) / Math.PI)
    .toSorted((one, other) => one - other);
  const sectors = directions.map((direction, index) => {
    const next = directions[(index + 1) % directions.length] ?? direction;
    return index === directions.length - 1 ? next + 360 - direction : next - direction;
  });
  const alternate = sectors.reduce((sum, sector, index) => sum + (index % 2 === 0 ? sector : 0), 0);
  if (sectors.length % 2 === 0 && Math.abs(alternate - 180) <= ANGLE_SLIP) return [];
  const message =
    sectors.length % 2 === 0
      ? `alternate angles sum to ${alternate.toFixed(6)}° instead of 180°`
      : `${sectors.length} creases meet, an odd number`;
  return [{ rule: 'Kawasaki', vertex, message }];
}

function maekawa(vertex: number, edges: readonly Edge[]): VertexFault[] {
  const mountains = edges.filter(({ letter }) => letter === 'M').length;
  const valleys = edges.length - mountains;
  if (Math.abs(mountains - valleys) === 2) return [];
  return [
    {
      rule: 'Maekawa',
      vertex,
      message: `${mountains} mountains and ${valleys} valleys meet; they must differ by 2`,
    },
  ];
}
