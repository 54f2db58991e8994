import { z } from 'zod';
import { shift } from '../../geometry/move-shape.ts';
import { lengthBetween } from '../../lengths/length-schema.ts';
import { mm } from '../../lengths/nanometres.ts';
import { centredRow, MOST_MOTIFS, repeatKind } from './repeat-kind.ts';

const pitch = (description: string) =>
  lengthBetween(mm(1), mm(600)).meta({ description: `${description}, 1 mm to 600 mm.` });

/** Rows and columns; staggered like bricks, every second row has one motif less and lies half a step to the side. */
export const grid = repeatKind({
  name: 'grid',
  schema: z.strictObject({
    repeat: z.literal('grid'),
    columns: z.int().min(1).max(MOST_MOTIFS).meta({ description: 'How many motifs a row has.' }),
    rows: z.int().min(1).max(MOST_MOTIFS),
    across: pitch('How far apart neighbours in a row lie, middle to middle'),
    down: pitch('How far apart rows lie, middle to middle'),
    staggered: z.boolean().optional().meta({
      description: 'Whether every second row lies half a step to the side, with one motif less; default no.',
    }),
  }),
  faults: ({ columns, rows, staggered }) => {
    if (columns * rows > MOST_MOTIFS)
      return [
        {
          path: ['rows'],
          message: `the grid has ${columns * rows} motifs`,
          remedy: `give fewer rows or columns, for at most ${MOST_MOTIFS} motifs`,
        },
      ];
    if (staggered && columns === 1 && rows > 1)
      return [
        {
          path: ['columns'],
          message: 'a staggered grid of one column has nothing in every second row',
          remedy: 'give at least 2 columns, or do not stagger them',
        },
      ];
    return [];
  },
  places: ({ columns, rows, across, down, staggered }) =>
    centredRow(rows, down).flatMap((y, row) =>
      centredRow(staggered && row % 2 === 1 ? columns - 1 : columns, across).map((x) => shift(x, y)),
    ),
});
