import type { Nm } from '../lengths/nanometres.ts';
import { type Bound, exactly } from './bounds.ts';

interface WithDimensions {
  readonly dimensions?: unknown;
}

/** JSON Pointer of a dimension by its dotted name. */
export const pointerTo = (dimension: string): string => `/dimensions/${dimension.replaceAll('.', '/')}`;

/** The value that a spec fixes for a dimension, by its dotted name, if it does. */
export function givenIn({ dimensions }: WithDimensions, name: string): Nm | undefined {
  const value = name
    .split('.')
    .reduce<unknown>((member, key) => (member as Record<string, unknown> | undefined)?.[key], dimensions);
  return typeof value === 'number' ? value : undefined;
}

/**
 * Bounds that hold the dimensions which a spec fixes.
 * @param sums for a dimension that is no unknown, the sum of unknowns that it is
 */
export const givenBounds = (
  spec: WithDimensions,
  dimensions: readonly { readonly name: string; readonly title: string }[],
  sums: Readonly<Record<string, Readonly<Record<string, number>>>> = {},
): Bound[] =>
  dimensions.flatMap(({ name, title }) => {
    const value = givenIn(spec, name);
    return value === undefined ? [] : exactly(title, sums[name] ?? { [name]: 1 }, value, pointerTo(name));
  });
