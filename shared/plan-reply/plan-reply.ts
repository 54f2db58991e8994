import { z } from 'zod';
import { shownExtent, shownLength } from '../lengths/length-reply.ts';
import { knockoutsReply, placesReply } from './knockouts-reply.ts';
import { locksReply } from './locks-reply.ts';

/** One operation of JSON Patch, to be applied to the spec that was sent. */
export const changeReply = z
  .strictObject({
    op: z.enum(['add', 'remove']),
    path: z.string().meta({ description: 'JSON Pointer (RFC 6901) into the spec.' }),
    value: z.unknown().optional(),
  })
  .meta({ id: 'Change', description: 'One operation of JSON Patch (RFC 6902), to be applied to the spec.' });

const summary = z
  .strictObject({
    sheet: z.string(),
    closed: shownExtent,
    blank: shownExtent,
    perPocket: z.int().optional(),
  })
  .meta({ id: 'PlanSummary' });

/** A change that was solved and works. */
export const remedyReply = z
  .strictObject({ message: z.string(), changes: z.array(changeReply), gives: summary })
  .meta({ id: 'Remedy', description: 'A change to the spec that was solved and works, and what it gives.' });

const fitting = z
  .strictObject({
    item: z.string().meta({ description: 'Id of the card’s size.' }),
    envelope: z.string().optional().meta({ description: 'Id of the envelope’s size.' }),
    perPocket: z.int(),
    turned: z.boolean(),
  })
  .meta({ id: 'Fitting' });

type DimensionTree = { [name: string]: z.output<typeof shownLength> | DimensionTree };

const dimensions: z.ZodType<DimensionTree> = z
  .record(z.string(), z.union([shownLength, z.record(z.string(), shownLength)]))
  .meta({
    id: 'Dimensions',
    description: 'Every dimension of the style, named as under `dimensions` in a spec.',
  });

const glueStrip = z
  .strictObject({
    panel: z.string(),
    face: z.enum(['inside', 'outside']).meta({ description: 'The side of the paper that it is put on.' }),
    to: z.string().meta({ description: 'The panel that it sticks to.' }),
    left: shownLength,
    top: shownLength,
    right: shownLength,
    bottom: shownLength,
  })
  .meta({
    id: 'GlueStrip',
    description:
      'A strip of tape or a line of glue: distances from the top left corner of the open blank, inside face up.',
  });

const direction = z.enum(['upright', 'inverted', 'turned left', 'turned right']).meta({ id: 'Direction' });

/** The reply of `POST /v1/folders/plan`. */
export const planReply = z
  .strictObject({
    style: z.string(),
    sheet: z.strictObject({
      title: z.string(),
      size: z.string().optional(),
      width: shownLength,
      height: shownLength,
      turned: z.boolean().meta({ description: 'The blank lies turned by a quarter on the sheet.' }),
      whole: z
        .boolean()
        .meta({ description: 'The sheet’s own edges serve as the blank’s: nothing is trimmed.' }),
      caliper: shownLength,
      caliperFrom: z.string(),
    }),
    blank: shownExtent,
    closed: z.strictObject({ width: shownLength, height: shownLength, thickness: shownLength }),
    dimensions,
    scores: z
      .strictObject({
        vertical: z.array(shownLength).meta({ description: 'Distances from the blank’s left edge.' }),
        horizontal: z.array(shownLength).meta({ description: 'Distances from the blank’s top edge.' }),
      })
      .meta({ description: 'Where the scores lie that run straight across, inside face up.' }),
    glue: z
      .array(
        z.strictObject({
          name: z.string(),
          strips: z.array(glueStrip),
          length: shownLength.meta({ description: 'Of all its strips together.' }),
        }),
      )
      .meta({ description: 'Where tape or glue goes, in the order in which it is put on.' }),
    tapeLength: shownLength.meta({
      description: 'Tape or glue for one folder: all strips, and a tenth for what is lost.',
    }),
    locks: locksReply.optional().meta({
      description: 'Which tongue goes through which slot; absent where nothing is held so.',
    }),
    contents: z
      .strictObject({
        item: z.enum(['card', 'envelope']),
        width: shownLength,
        height: shownLength,
        turned: z.boolean(),
        perPocket: z.int(),
        pockets: z.int(),
        setThickness: shownLength,
        stackThickness: shownLength,
        spineHolds: z.int().optional().meta({
          description:
            'Sets per pocket that the solved spine, or whatever else holds the stack, has room for; absent where nothing is set up around it.',
        }),
      })
      .optional(),
    fits: z.array(fitting).optional().meta({
      description: 'Without contents in the spec: the largest published contents that the pockets take.',
    }),
    proof: z
      .strictObject({
        holds: z.literal(true).meta({ description: 'A plan whose proof fails is refused.' }),
        residual: z.number().meta({
          description: 'Millimetres by which two ways of folding the same sheet disagree.',
        }),
        checks: z.array(z.strictObject({ name: z.string(), holds: z.boolean(), message: z.string() })),
        pockets: z.array(
          z.strictObject({ name: z.string(), width: shownLength, height: shownLength }).meta({
            description: 'Clear inside between the folds, less what the folds take.',
          }),
        ),
        closed: z
          .strictObject({
            layersAtSpine: z.int().optional(),
            mostLayers: z.int(),
            thicknessAtSpine: shownLength.optional(),
            mostThickness: shownLength,
          })
          .meta({
            description:
              'Layers of both covers together, and their thickness with the contents; beside the spine, or whatever else is set up at a right angle, and where they are most.',
          }),
        stacks: z
          .array(
            z.strictObject({
              layers: z.int(),
              thickness: shownLength,
              panels: z.array(z.string()),
              area: z.number().meta({ description: 'Square millimetres.' }),
            }),
          )
          .meta({ description: 'Every different stack of layers in the flat form, the thickest first.' }),
      })
      .meta({ description: 'What was proved by folding the crease pattern.' }),
    regions: z
      .array(
        z.strictObject({
          view: z.string(),
          regions: z.array(
            z
              .strictObject({
                part: z.string(),
                face: z.enum(['outside', 'inside']).meta({ description: 'Which printed side shows.' }),
                direction: z.strictObject({ sameWay: direction, headToFoot: direction }).meta({
                  description:
                    'Which way the print points when the sheet’s two prints run the same way, and when they run head to foot.',
                }),
                area: z.number().meta({ description: 'Square millimetres that can be seen.' }),
              })
              .meta({ id: 'Region' }),
          ),
        }),
      )
      .meta({ description: 'What can be seen from each side of the finished folder.' }),
    places: placesReply,
    knockouts: knockoutsReply.optional().meta({ description: 'What becomes of the spec’s knockouts.' }),
    scoring: z
      .strictObject({
        up: z.enum(['inside', 'outside']),
        right: z.enum(['score-valley', 'score-mountain']),
        note: z.string(),
      })
      .meta({
        description: 'From which face the scores are made best, as the sheet lies in this convention.',
      }),
    foldAllowance: z
      .strictObject({
        factor: z.number(),
        perEnd: shownLength,
        entered: z.boolean(),
        why: z.string(),
      })
      .meta({ description: 'What each fold takes from the panel that ends there.' }),
    reasons: z.array(
      z.strictObject({
        dimension: z.string(),
        title: z.string(),
        value: shownLength,
        decidedBy: z.enum(['given', 'bound', 'wish']),
        why: z.string(),
      }),
    ),
    bounds: z.array(
      z.strictObject({
        name: z.string(),
        kind: z.enum(['room', 'fit', 'form', 'given']),
        path: z.string().optional(),
        why: z.string(),
        slack: shownLength.meta({ description: 'How far the plan stays within the bound.' }),
      }),
    ),
    warnings: z.array(
      z.strictObject({
        code: z.string(),
        path: z.string(),
        message: z.string(),
        remedy: z.string().optional(),
      }),
    ),
    alternatives: z.array(remedyReply),
    cautions: z.array(z.string()),
  })
  .meta({ id: 'Plan', title: 'Plan', description: 'The solved dimensions with their reasons.' });

export type PlanReply = z.output<typeof planReply>;

/** What a refusal adds to a problem. */
export const refusalReply = z
  .strictObject({
    bound: z.string(),
    shortfall: shownLength,
    remedies: z.array(remedyReply),
  })
  .meta({ id: 'Refusal' });

/** The reply of `POST /v1/folders/possible`. */
export const possibleReply = z
  .strictObject({
    possible: z.array(
      z.strictObject({
        item: z.string(),
        envelope: z.string().optional(),
        perPocket: z.int().meta({ description: 'The most per pocket, counted to 12.' }),
        gives: summary,
      }),
    ),
    note: z.string().optional().meta({ description: 'Why the list is empty, where it is.' }),
  })
  .meta({ id: 'Possible' });
