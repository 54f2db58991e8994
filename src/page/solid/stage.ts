import type { Solid } from '../ask/solid.ts';
export interface Stage {
  readonly show: (solid: Solid) => void;
  readonly foldTo: (at: number) => void;
  readonly turn: (a: number, d: number) => void;
  readonly paper: (...args: unknown[]) => Promise<void>;
  readonly close: () => void;
}
export function openStage(_: HTMLCanvasElement): Stage {
  throw new Error('not yet');
}
