/** A length on a ruler's 1/64 in steps, as a spec writes it. */
function inches(sixtyFourths: number): string {
  const [whole, rest] = [Math.floor(sixtyFourths / 64), sixtyFourths % 64];
  const parts = [whole > 0 || rest === 0 ? `${whole}` : '', rest > 0 ? `${rest}/64` : ''];
  return `${parts.filter((part) => part !== '').join(' ')} in`;
}

interface Steps {
  /** 0 to 63. */
  readonly across: number;
  /** 0 to 63. */
  readonly along: number;
  /** 0 to 15. */
  readonly more: number;
  /** 0 to 31. */
  readonly paper: number;
}

const valuesOfSteps = 64 * 64 * 16 * 32;

/** A caliper of paper or card stock, in steps of a hundredth of a millimetre. */
const caliper = (paper: number): string => `${(0.1 + paper / 100).toFixed(2)} mm`;

/** Three ways in which makers ask: a measured card, fixed dimensions, and published sizes. */
const kinds: readonly ((steps: Steps) => object)[] = [
  ({ across, along, more, paper }) => ({
    style: 'twin-sleeve',
    contents: {
      item: { width: inches(4 * 64 + across), height: inches(5 * 64 + along) },
      perPocket: 2,
      thickness: inches(3 + more),
    },
    stock: { width: '13 in', height: '19 in', caliper: caliper(paper) },
    hem: { turn: 'out' },
    grid: '1/16 in',
  }),
  ({ across, along, more, paper }) => ({
    style: 'twin-sleeve',
    dimensions: {
      panel: { width: inches(4 * 64 + across), height: inches(5 * 64 + along) },
      spine: inches(24 + more),
      overlap: '1/2 in',
      topFlap: '2 1/2 in',
      hem: '1 3/4 in',
    },
    stock: { width: '330 mm', height: '483 mm', caliper: caliper(paper) },
    corners: 'mitred',
  }),
  ({ across, along, more, paper }) => ({
    style: 'twin-sleeve',
    contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, thickness: inches(3 + more) },
    ease: { across: inches(8 + across), along: inches(4 + along) },
    stock: { size: 'iso-a2', caliper: caliper(paper) },
    hem: { turn: 'in' },
  }),
];

/** So many specs there are, no two alike. */
export const differentSpecs = kinds.length * valuesOfSteps;

/**
 * One valid spec of many; another number gives another spec, and the kinds take turns.
 * @throws {RangeError} beyond the last one, so that no run repeats a spec by accident
 */
export function specNumber(index: number): object {
  const kind = kinds[index % kinds.length];
  const steps = Math.floor(index / kinds.length);
  if (kind === undefined || steps >= valuesOfSteps) throw new RangeError(`there is no spec number ${index}`);
  const digit = (unit: number, base: number) => Math.floor(steps / unit) % base;
  return kind({
    across: digit(1, 64),
    along: digit(64, 64),
    more: digit(64 * 64, 16),
    paper: digit(64 * 64 * 16, 32),
  });
}
