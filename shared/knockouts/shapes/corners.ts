import { lengthOrZero } from '../../lengths/length-schema.ts';
import type { ShapeFault } from './shape-kind.ts';

/** The member of shapes whose corners can be rounded. */
export const corner = (usual: string) =>
  lengthOrZero.optional().meta({
    description: `Radius of the corners; ${usual}. No larger than the sides have room for, 0 for sharp corners.`,
  });

/** What is wrong with a radius that the corners of a side cannot all have. */
export const cornerFaults = (radius: number, largest: number): ShapeFault[] =>
  radius <= largest
    ? []
    : [
        {
          path: ['corner'],
          message: 'the corners are rounder than the sides have room for',
          remedy: `give a radius of at most ${Math.floor(largest / 10_000) / 100} mm`,
        },
      ];
