import type { Nm } from '../../lengths/nanometres.ts';
import type { Range, Unknown, Wish } from '../../solver/bounds.ts';
import type { Situation } from '../style.ts';

type Known = Readonly<Record<string, Nm>>;

/** An unknown that is to be as small as its bounds allow. */
export const leastOf = (name: string, why: string): Unknown => ({
  name,
  wish: ({ least }) => ({ value: least, snap: 'up', why }),
});

/** An unknown that is to be some length, or what a reckoning with the ones before it says. */
export const about = (
  name: string,
  value: Nm | ((known: Known, range: Range) => Nm),
  why: string,
  snap: Wish['snap'] = 'nearest',
): Unknown => ({
  name,
  wish: (range, known) => ({ value: typeof value === 'number' ? value : value(known, range), snap, why }),
});

/** What the sheet and the machine have at most, whichever is less. */
export const roomOf = ({ rooms }: Situation): { readonly width: Nm; readonly height: Nm } => ({
  width: Math.min(...rooms.map(({ width }) => width)),
  height: Math.min(...rooms.map(({ height }) => height)),
});
