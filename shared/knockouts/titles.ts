import type { KnockoutSpec } from './knockout-spec.ts';

/** What people call each knockout: its own name, or what it is, with a number where several are the same. */
export function titlesOf(knockouts: readonly KnockoutSpec[]): readonly string[] {
  const kinds = knockouts.map(kindOf);
  return knockouts.map(({ name }, index) => {
    if (name !== undefined) return `“${name}”`;
    const kind = kinds[index] ?? '';
    const same = kinds.flatMap((each, at) =>
      each === kind && knockouts[at]?.name === undefined ? [at] : [],
    );
    return same.length === 1 ? `the ${kind}` : `the ${kind} no. ${same.indexOf(index) + 1}`;
  });
}

function kindOf(knockout: KnockoutSpec): string {
  switch (knockout.kind) {
    case 'thumb-notch':
      return 'thumb notch';
    case 'rounded-corners':
      return 'rounding of corners';
    case 'ribbon-slots':
      return 'pair of ribbon slots';
    case 'figure':
      if ('shape' in knockout.figure) return knockout.figure.shape.replaceAll('-', ' ');
      return 'artwork' in knockout.figure ? 'artwork' : 'lettering';
  }
}
