import type { Clock } from '../../../src/store/store.ts';

/** A clock that stands until it is set. */
export function setClock(start = '2025-11-03T18:00:00.000Z'): Clock & { set(time: string): void } {
  let time = start;
  return Object.assign(() => new Date(time), {
    set: (next: string) => {
      time = next;
    },
  });
}
