import type { CreasePattern } from '../creases/crease-pattern.ts';

/** Where the outermost spine creases of a pattern lie, as x in nanometres: the folds of 90°. */
export function spineLines({ edges, vertices }: CreasePattern): {
  readonly first: number;
  readonly second: number;
} {
  const lines = edges
    .filter(({ foldAngle }) => Math.abs(foldAngle) === 90)
    .map(({ ends }) => vertices[ends[0]]?.x ?? 0);
  return { first: Math.min(...lines), second: Math.max(...lines) };
}
