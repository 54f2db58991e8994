import type { Methods } from './methods.ts';

/** What the page sends to the worker. */
export interface Request {
  readonly id: number;
  readonly method: keyof Methods;
  readonly words: readonly unknown[];
}

/** What comes back. */
export type Response =
  | { readonly id: number; readonly result: unknown }
  | { readonly id: number; readonly failure: string };
