import { z } from 'zod';
import { lengthBetween, lengthOrZero } from '../lengths/length-schema.ts';
import { mm } from '../lengths/nanometres.ts';

/** What is cut from other papers to go with a knockout. */
export const inlaySpec = z
  .strictObject({
    margin: lengthBetween(mm(1), mm(60))
      .optional()
      .meta({ description: 'How far the inlay reaches beyond the opening; default 6 mm, room for tape.' }),
    frame: z
      .strictObject({
        width: lengthBetween(mm(2), mm(100)).meta({ description: 'Width of the frame around the opening.' }),
        reveal: lengthOrZero
          .optional()
          .meta({ description: 'How much of the cover is seen between opening and frame; default 0.' }),
        raised: lengthBetween(mm(0.1), mm(10)).optional().meta({
          description:
            'Thickness of foam under the frame. On a pocket the spine is made wider by it, less what closing presses flat.',
        }),
      })
      .optional()
      .meta({ description: 'A matting frame to be glued around the opening.' }),
  })
  .meta({
    id: 'Inlay',
    description:
      'A piece of second paper behind the opening, the same figure enlarged, and a frame around it.',
  });
