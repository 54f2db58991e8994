import { craft } from './craft.ts';
import { iso } from './iso.ts';
import { otherMetric } from './other-metric.ts';
import type { Size, SizeKind } from './size.ts';
import { us } from './us.ts';

const frozen = (size: Size): Size => {
  const kinds = Object.freeze([...size.kinds]);
  return Object.freeze(
    size.takes === undefined ? { ...size, kinds } : { ...size, kinds, takes: Object.freeze([...size.takes]) },
  );
};

/** Every published size that a spec may name, by namespace: iso, other metric, us, craft. */
export const sizes: readonly Size[] = Object.freeze([...iso, ...otherMetric, ...us, ...craft].map(frozen));

const byId: ReadonlyMap<string, Size> = new Map(sizes.map((size) => [size.id, size]));

/** The size with exactly this id. */
export const sizeById = (id: string): Size | undefined => byId.get(id);

/** The sizes that serve as this kind, in catalogue order. */
export const sizesOfKind = (kind: SizeKind): readonly Size[] =>
  sizes.filter((size) => size.kinds.includes(kind));

/** The envelopes that are sold for a card. */
export const envelopesFor = (cardId: string): readonly Size[] =>
  sizes.filter((size) => size.takes?.includes(cardId));
