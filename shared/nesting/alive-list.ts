/** Numbers 0 to length, of which some drop out for good: finds the next that is left in almost constant time. */
export interface AliveList {
  /** The first that is left from `at` on; `length` when none is. */
  readonly from: (at: number) => number;
}

/** @param alive whether a number is still left; once false it stays false */
export function aliveList(length: number, alive: (at: number) => boolean): AliveList {
  const next = Int32Array.from({ length: length + 1 }, (_, at) => at);
  const from = (at: number): number => {
    let found = at;
    while (found < length) {
      const jump = next[found] as number;
      if (jump !== found) found = jump;
      else if (alive(found)) break;
      else next[found] = found + 1;
    }
    for (let step = at; step < found; ) {
      const jump = next[step] as number;
      next[step] = found;
      step = jump;
    }
    return found;
  };
  return { from };
}
