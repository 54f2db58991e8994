import { z } from 'zod';
import { shownLength } from '../lengths/length-reply.ts';

/** Where knockouts can be put, as a plan's reply gives it. */
export const placesReply = z
  .array(
    z
      .strictObject({
        name: z.string().meta({ description: 'For `on.place` of a knockout.' }),
        seenFrom: z
          .enum(['outside', 'inside'])
          .meta({ description: 'The side of the flat piece from which it is seen.' }),
        width: shownLength,
        height: shownLength,
      })
      .meta({ id: 'Place' }),
  )
  .meta({ description: 'Where knockouts can be put, each as it is seen upright.' });

const cutReply = z
  .strictObject({
    panels: z.array(z.string()).meta({ description: 'Panels that lie level beside each other.' }),
    face: z.enum(['outside', 'inside']).meta({
      description: 'The printed side that this layer turns to who looks at the place.',
    }),
    mirrored: z.boolean().meta({
      description: 'Whether the figure is drawn mirrored on the blank, inside face up.',
    }),
    reachesEdge: z.boolean().meta({ description: 'Whether the opening reaches an edge of the layer.' }),
  })
  .meta({ id: 'KnockoutCut', description: 'What a knockout cuts of one layer.' });

const findingReply = z
  .strictObject({
    number: z.int().meta({ description: 'The number beside its marks in the pictures.' }),
    code: z.string(),
    knockouts: z.array(z.int()).meta({ description: 'Places in the list of knockouts, from 0.' }),
    message: z.string(),
    remedy: z.string().optional(),
    size: shownLength.optional(),
    limit: shownLength.optional(),
    at: z
      .array(z.strictObject({ x: shownLength, y: shownLength }))
      .meta({ description: 'Where: from the top left corner of the open blank, inside face up.' }),
  })
  .meta({ id: 'KnockoutFinding' });

/** What becomes of a spec's knockouts, as a plan's reply gives it. */
export const knockoutsReply = z
  .strictObject({
    list: z.array(
      z
        .strictObject({
          title: z.string(),
          place: z.string(),
          width: shownLength,
          height: shownLength,
          cuts: z.array(cutReply).meta({ description: 'The layers that are cut, the seen one first.' }),
        })
        .meta({ id: 'PlacedKnockout' }),
    ),
    openings: z.int().meta({ description: 'Openings within the open blank.' }),
    outlineChanges: z.boolean().meta({ description: 'Whether an opening reaches the blank’s outline.' }),
    pieces: z
      .array(
        z.strictObject({
          name: z.string().meta({ description: 'For the `piece` of a drawing.' }),
          title: z.string(),
          kind: z.enum(['inlay', 'frame']),
          knockout: z.int(),
          count: z.int().meta({ description: 'Separate pieces in its drawing.' }),
          width: shownLength,
          height: shownLength,
        }),
      )
      .meta({ description: 'What is cut from other papers.' }),
    findings: z
      .array(findingReply)
      .meta({ description: 'What the checks found, with where and how much; also among the warnings.' }),
  })
  .meta({ id: 'Knockouts' });
