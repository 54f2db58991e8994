/** What a spec may name instead of giving it. */
export const namedKinds = ['conventions', 'cutters', 'stock'] as const;
export type NamedKind = (typeof namedKinds)[number];

/** A name in a spec that stands for something kept. */
export interface NameInSpec {
  readonly kind: NamedKind;
  readonly name: string;
  /** Where it stands: a member, or an entry of a list. */
  readonly path: readonly [member: string] | readonly [member: string, index: number];
}

/** The members in which names may stand; in a list too. */
const members: Readonly<Record<string, NamedKind>> = {
  convention: 'conventions',
  cutter: 'cutters',
  stock: 'stock',
};

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Every name in a spec that was parsed as JSON but not yet read; none in anything else. */
export function namesIn(spec: unknown): readonly NameInSpec[] {
  if (!isRecord(spec)) return [];
  return Object.entries(members).flatMap(([member, kind]): NameInSpec[] => {
    const value = spec[member];
    if (typeof value === 'string') return [{ kind, name: value, path: [member] }];
    if (!Array.isArray(value)) return [];
    return value.flatMap((entry: unknown, index) =>
      typeof entry === 'string' ? [{ kind, name: entry, path: [member, index] as const }] : [],
    );
  });
}

/** A copy of a spec with a value in the place of each name; the spec itself if there is none. */
export function withValues(
  spec: unknown,
  values: readonly { readonly at: NameInSpec; readonly value: unknown }[],
): unknown {
  if (values.length === 0 || !isRecord(spec)) return spec;
  const copy: Record<string, unknown> = { ...spec };
  for (const { at, value } of values) {
    const [member, index] = at.path;
    const list = copy[member];
    copy[member] =
      index === undefined || !Array.isArray(list)
        ? value
        : list.map((entry: unknown, here) => (here === index ? value : entry));
  }
  return copy;
}
