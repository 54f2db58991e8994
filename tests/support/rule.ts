import type { Drawn } from './drawn.ts';

/**
 * A rule that every drawing keeps. `broken` says how one does not, in a line; undefined when it does.
 */
export interface Rule {
  readonly name: string;
  broken(drawn: Drawn): string | undefined;
}
