import { z } from 'zod';
import { rectangle } from '../../contents/contents-schema.ts';
import type { Nm } from '../../lengths/nanometres.ts';
import { sizeById } from '../../sizes/catalogue.ts';
import { atLeast, atMost, type Bound, exactly } from '../../solver/bounds.ts';
import { givenIn } from '../../solver/given.ts';

/** A card that a piece is as large as, by a published size or measured. */
export const cardSize = (description: string) =>
  rectangle('card', {
    turned: z.boolean().optional().meta({ description: 'Lying on its side; default false.' }),
  })
    .optional()
    .meta({ description });

interface Sized {
  readonly card?:
    | {
        readonly size?: string | undefined;
        readonly width?: Nm | undefined;
        readonly height?: Nm | undefined;
        readonly turned?: boolean | undefined;
      }
    | undefined;
  readonly dimensions?: unknown;
}

/** Makes two unknowns as large as the spec's card, where the spec does not fix them as dimensions. */
export function cardBounds(spec: Sized, width: string, height: string): Bound[] {
  const { card } = spec;
  if (!card) return [];
  const sides = [
    ['width', width],
    ['height', height],
  ] as const;
  return sides.flatMap(([side, name]) => {
    if (givenIn(spec, name) !== undefined) return [];
    const own = card.turned ? (side === 'width' ? 'height' : 'width') : side;
    const measured = card[own];
    if (measured !== undefined) return exactly(`card ${own}`, { [name]: 1 }, measured, `/card/${own}`);
    const listed = card.size === undefined ? undefined : sizeById(card.size)?.[own];
    if (listed === undefined) return [];
    const why = 'it is to be as large as the card';
    return [
      atLeast(`card ${own}`, 'fit', { [name]: 1 }, listed, why, '/card'),
      atMost(`card ${own}`, 'fit', { [name]: 1 }, listed, why, '/card'),
    ];
  });
}
