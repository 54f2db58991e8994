import { z } from 'zod';
import { shownLength } from '../lengths/length-reply.ts';
import { showLength } from '../lengths/show-length.ts';
import { sizeById, sizes, sizesOfKind } from './catalogue.ts';
import { nearestIds } from './nearest-ids.ts';
import { authorities, type Size, type SizeKind, sizeKinds } from './size.ts';

const withArticle = (kind: SizeKind): string => (kind === 'envelope' ? 'an envelope' : `a ${kind}`);

const quoted = (text: string): string => JSON.stringify(text.length > 40 ? `${text.slice(0, 40)}…` : text);

const remedyFor = (text: string, kind: SizeKind | undefined): string => {
  const ids = nearestIds(text, kind).map((id) => `"${id}"`);
  return ids.length === 0
    ? 'choose an id from GET /v1/sizes, or give width and height'
    : `did you mean ${ids.join(' or ')}? GET /v1/sizes lists all`;
};

/**
 * The id of a published size, as a schema; its JSON Schema lists the ids. An unknown id, or one of another
 * kind, is refused with the nearest ids as the remedy.
 * @param kind accepts only sizes that serve as this kind
 */
export function sizeId(kind?: SizeKind) {
  const accepted = (kind === undefined ? sizes : sizesOfKind(kind)).map((size) => size.id);
  return z
    .string()
    .superRefine((text, context) => {
      const size = sizeById(text);
      if (size && (kind === undefined || size.kinds.includes(kind))) return;
      const message =
        size && kind
          ? `${quoted(text)} is ${size.kinds.map(withArticle).join(' and ')}, not ${withArticle(kind)}`
          : `${quoted(text)} is not the id of a published size`;
      context.addIssue({ code: 'custom', message, params: { remedy: remedyFor(text, kind) } });
    })
    .meta({ description: `The id of a published ${kind ?? 'paper'} size.`, enum: accepted });
}

/** A published size as a reply gives it. */
export const sizeReply = z.strictObject({
  id: z.string(),
  title: z.string(),
  kinds: z.array(z.enum(sizeKinds)),
  width: shownLength,
  height: shownLength,
  measure: z.enum(['metric', 'inch']).meta({ description: 'The system that the size is defined in.' }),
  source: z.string(),
  authority: z.enum(authorities).meta({
    description: 'How far the size can be relied on; measure one that goes by custom or practice.',
  }),
  takes: z
    .array(z.string())
    .optional()
    .meta({ description: 'The cards that an envelope is sold for, by id.' }),
  flat: z.literal(true).optional().meta({ description: 'A card that nobody folds.' }),
});

/** The reply of `GET /v1/sizes`. */
export const sizesReply = z.strictObject({ sizes: z.array(sizeReply) });

export type SizeReply = z.output<typeof sizeReply>;
export type SizesReply = z.output<typeof sizesReply>;

/** A size for a reply: both lengths in millimetres and inches. */
export const showSize = ({ kinds, takes, ...size }: Size): SizeReply => ({
  ...size,
  kinds: [...kinds],
  width: showLength(size.width),
  height: showLength(size.height),
  ...(takes === undefined ? {} : { takes: [...takes] }),
});
