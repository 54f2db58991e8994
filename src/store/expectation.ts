import type { Expectation } from './store.ts';

/** Whether what is expected holds for the current version; undefined if nothing is stored. */
export function holds(expected: Expectation, current: number | undefined): boolean {
  if (expected === 'any') return true;
  if (expected === 'absent') return current === undefined;
  if (expected === 'present') return current !== undefined;
  return current === expected.version;
}
