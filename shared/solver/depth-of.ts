import type { Nm } from '../lengths/nanometres.ts';
import type { Dimensions } from '../styles/style.ts';

interface Deep {
  readonly depth?: string;
  readonly dimensionNames: readonly { readonly name: string; readonly title: string }[];
}

/** The dimension that holds the stack of a piece that is set up, with what people call it. */
export function depthOf(
  { depth, dimensionNames }: Deep,
  dimensions: Dimensions,
): { readonly name: string; readonly title: string; readonly value: Nm } | undefined {
  const named = dimensionNames.find(({ name }) => name === depth);
  return named && { ...named, value: dimensions[named.name] ?? 0 };
}
