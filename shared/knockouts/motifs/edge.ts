import { z } from 'zod';
import { shift } from '../../geometry/move-shape.ts';
import { length, lengthBetween, lengthOrZero } from '../../lengths/length-schema.ts';
import { mm } from '../../lengths/nanometres.ts';
import type { ShapeFault } from '../shapes/shape-kind.ts';
import { centredRow, MOST_MOTIFS, repeatKind } from './repeat-kind.ts';

interface Measures {
  readonly length: number;
  readonly margin?: number | undefined;
  readonly count?: number | undefined;
  readonly pitch?: number | undefined;
}

/** What is left for the middles of the motifs, from first to last. */
const roomOf = ({ length, margin = 0 }: Measures): number => length - 2 * margin;

const countFor = (spec: Measures, pitch: number): number => Math.floor(roomOf(spec) / pitch) + 1;

function faults(spec: Measures): ShapeFault[] {
  if ((spec.count === undefined) === (spec.pitch === undefined))
    return [
      {
        path: [],
        message: 'how often the motif is repeated takes one of count and pitch',
        remedy: 'give how many motifs there are, or how far apart their middles lie',
      },
    ];
  if (roomOf(spec) < 0)
    return [
      {
        path: ['margin'],
        message: 'the margins leave nothing of the length',
        remedy: 'give a margin of at most half of the length',
      },
    ];
  if (spec.pitch !== undefined && countFor(spec, spec.pitch) > MOST_MOTIFS)
    return [
      {
        path: ['pitch'],
        message: `at this pitch the motif is repeated ${countFor(spec, spec.pitch)} times`,
        remedy: `give a larger pitch, for at most ${MOST_MOTIFS} motifs`,
      },
    ];
  return [];
}

/** A row along a straight edge that lies across; turn the whole for another edge. */
export const edge = repeatKind({
  name: 'edge',
  schema: z.strictObject({
    repeat: z.literal('edge'),
    length: length.meta({ description: 'How long the edge is.' }),
    margin: lengthOrZero.optional().meta({
      description:
        'From each end of the edge to the middle of the first and the last motif, at least; default 0.',
    }),
    count: z.int().min(1).max(MOST_MOTIFS).optional().meta({
      description: 'How many motifs, spread evenly from margin to margin; a single one lies in the middle.',
    }),
    pitch: lengthBetween(mm(1), mm(600)).optional().meta({
      description:
        'How far apart the middles of neighbours lie, 1 mm to 600 mm, instead of count: as many as fit, in the middle of the edge.',
    }),
  }),
  faults,
  places: (spec) => {
    const { count, pitch } = spec;
    const row =
      pitch === undefined
        ? centredRow(count ?? 1, count === undefined || count < 2 ? 0 : roomOf(spec) / (count - 1))
        : centredRow(countFor(spec, pitch), pitch);
    return row.map((x) => shift(x, 0));
  },
});
