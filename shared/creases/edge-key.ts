/** Far more vertices than any fold program makes. */
const MOST_VERTICES = 2 ** 20;

/** Two vertices as one number, the same whichever comes first: a key for the edge between them. */
export const edgeKey = (one: number, other: number): number =>
  one < other ? one * MOST_VERTICES + other : other * MOST_VERTICES + one;
