import type { Folded } from '../../shared/folding/proof-of.ts';
import { move } from '../../shared/geometry/plane.ts';
import { graphOf, verticesByRabbitEar } from '../support/other-folders.ts';

/**
 * How far rabbit-ear puts a vertex from where our steps put it in the flat form, in millimetres, at most. Creases that
 * are only set up at a right angle are flat there.
 */
export function flatByRabbitEar({ pattern, proof }: Folded): number {
  const form = proof.forms.at(-1);
  const root =
    form?.lies.findIndex(({ a, b, c, d, tx, ty }) => [a, b, c, d, tx, ty].join() === '1,0,0,1,0,0') ?? -1;
  if (!form || root < 0) throw new Error('nothing stays where it is');
  const graph = graphOf({
    ...pattern,
    edges: pattern.edges.map((edge) =>
      edge.letter !== 'B' && Math.abs(edge.foldAngle) !== 180
        ? { ...edge, letter: 'F' as const, foldAngle: 0 }
        : edge,
    ),
  });
  const theirs = verticesByRabbitEar(graph, root);
  let most = 0;
  for (const [face, { vertices }] of pattern.faces.entries()) {
    for (const vertex of vertices) {
      const [point, lies, there] = [pattern.vertices[vertex], form.lies[face], theirs[vertex]];
      if (!point || !lies || !there) throw new Error(`vertex ${vertex} is missing`);
      const here = move(lies, point);
      // theirs has y up
      most = Math.max(
        most,
        Math.hypot(here.x / 1e6 - (there[0] ?? Number.NaN), -here.y / 1e6 - (there[1] ?? Number.NaN)),
      );
    }
  }
  return most;
}
