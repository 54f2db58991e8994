/** A source of numbers that look random and are the same for the same seed. */
export interface Random {
  /** In [0, 1), of 32 bits. */
  readonly next: () => number;
  /** A whole number from 0 up to, not including, `limit`. */
  readonly below: (limit: number) => number;
}

/** SplitMix32: spreads a seed over the state, since near seeds must not give near numbers. */
function* spread(seed: number): Generator<number, never> {
  for (let state = seed >>> 0; ; ) {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    yield (mixed ^ (mixed >>> 16)) >>> 0;
  }
}

const rotated = (value: number, by: number): number => (value << by) | (value >>> (32 - by));

/**
 * The generator xoshiro128** of Blackman & Vigna, "Scrambled linear pseudorandom number generators", ACM Trans.
 * Math. Software 47 (2021) (from memory). Seeds are whole numbers; only their low 32 bits count.
 */
export function randomFrom(seed: number): Random {
  const states = spread(seed);
  let [a, b, c, d] = [states.next().value, states.next().value, states.next().value, states.next().value];
  const next = (): number => {
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotated(d, 11);
    return result / 2 ** 32;
  };
  return { next, below: (limit) => Math.floor(next() * limit) };
}
