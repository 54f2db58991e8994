import { z } from 'zod';

/** One fault. `path` is an RFC 6901 JSON Pointer into the body: `/contents/item/width`, or `""` for all of it. */
export const problemError = z
  .strictObject({
    path: z.string().meta({
      description:
        'JSON Pointer (RFC 6901) to the place in the body; empty for the body as a whole. For a query or path parameter, a pointer into those parameters.',
      examples: ['/contents/item/width'],
    }),
    message: z.string().meta({ description: 'What is wrong there.' }),
    remedy: z.string().optional().meta({ description: 'What would mend it.' }),
  })
  .meta({ id: 'ProblemError' });

const members = {
  type: z.string().meta({
    description: 'A URI reference to the kind of problem, or `about:blank` for a plain HTTP error.',
    format: 'uri-reference',
    examples: ['/problems/invalid-spec'],
  }),
  title: z.string().meta({ description: 'The kind of problem in a few words; the same every time.' }),
  status: z.int().min(400).max(599).meta({ description: 'The HTTP status code.' }),
  detail: z.string().meta({ description: 'This occurrence, in a sentence.' }),
  instance: z
    .string()
    .optional()
    .meta({ description: 'A URI reference to this occurrence.', format: 'uri-reference' }),
  errors: z.array(problemError).meta({ description: 'Every fault found; may be empty.' }),
};

/** An error reply, RFC 9457 `application/problem+json`; other members may follow. */
export const problemReply = z.looseObject(members).meta({
  id: 'Problem',
  description: 'What went wrong (RFC 9457).',
});

/** The reply to a spec that was understood but has no folder; see {@link Refusal}. */
export const cannotBeFoldedReply = z
  .looseObject({
    ...members,
    bound: z.string().optional().meta({ description: 'The bound that cannot be met.' }),
    shortfall: z.unknown().optional().meta({ description: 'By how much it is missed.' }),
    remedies: z
      .array(z.unknown())
      .readonly()
      .meta({ description: 'Changes that would help, cheapest first.' }),
  })
  .meta({ id: 'CannotBeFolded', description: 'The spec was understood, but cannot be folded (RFC 9457).' });

export type ProblemError = Readonly<z.output<typeof problemError>>;

/** A problem to send. Members beyond those of the RFC are extensions (section 3.2). */
export interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly instance?: string;
  readonly errors: readonly ProblemError[];
  readonly [extension: string]: unknown;
}

/** RFC 9457 section 3. */
export const problemMediaType = 'application/problem+json';
