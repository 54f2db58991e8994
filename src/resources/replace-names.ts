import { type NameInSpec, namesIn, withValues } from '../../shared/spec/names-in-spec.ts';
import { storedName } from '../../shared/spec/stored-name.ts';
import type { FindKept } from './find-kept.ts';

/**
 * A spec with everything that it names put in its place. A name that stands for nothing is left, and refused where
 * the spec is read.
 * @param spec parsed JSON, not yet read
 */
export async function replaceNames(spec: unknown, find: FindKept): Promise<unknown> {
  const names = namesIn(spec);
  if (names.length === 0) return spec;
  const found = await Promise.all(names.map((at) => namedValue(at, find)));
  return withValues(
    spec,
    found.flatMap((each) => (each === undefined ? [] : [each])),
  );
}

async function namedValue(at: NameInSpec, find: FindKept) {
  const name = storedName.safeParse(at.name);
  if (!name.success) return undefined;
  const value = await find(at.kind, name.data);
  return value === undefined ? undefined : { at, value };
}
