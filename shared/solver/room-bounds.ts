import type { Nm } from '../lengths/nanometres.ts';
import { atMost, type Bound } from './bounds.ts';

/** A side of the blank as a sum of unknowns, and of what does not depend on them, in nanometres. */
export interface Span {
  readonly terms: Readonly<Record<string, number>>;
  readonly besides?: Nm;
}

interface Room {
  readonly name: 'sheet' | 'cutter';
  readonly width: Nm;
  readonly height: Nm;
  readonly path: string;
}

/** Keeps the blank within every room. */
export const roomBounds = (
  rooms: readonly Room[],
  blank: { readonly width: Span; readonly height: Span },
): Bound[] =>
  rooms.flatMap((room) =>
    (
      [
        ['width', 'wider'],
        ['height', 'higher'],
      ] as const
    ).map(([side, more]) => {
      const { name, path, [side]: has } = room;
      const { terms, besides = 0 } = blank[side];
      const bound = atMost(
        `${name} ${side}`,
        'room',
        terms,
        has - besides,
        `the ${name} is no ${more}`,
        path,
      );
      return { ...bound, room: { name, side, has } };
    }),
  );
