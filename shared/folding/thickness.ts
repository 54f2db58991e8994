import type { CreasePattern } from '../creases/crease-pattern.ts';
import { TOUCH } from './flat-faces.ts';
import { spineLines } from './spine-lines.ts';
import type { Spot } from './spots.ts';

/** Layers that lie on each other somewhere in the flat form. */
export interface Stack {
  readonly layers: number;
  /** The panels, from the lowest layer up. */
  readonly panels: readonly string[];
  /** Square millimetres. */
  readonly area: number;
}

/** How thick the closed folder is, counted in layers of its own sheet. */
export interface ClosedLayers {
  /** Both covers together, beside the spine. */
  readonly atSpine: number;
  /** Both covers together, where they are thickest. */
  readonly most: number;
}

/** Every different stack of panels, the thickest first. */
export function stacksOf(spots: readonly Spot[]): readonly Stack[] {
  const stacks = new Map<string, Stack>();
  for (const { stack, area } of spots) {
    const panels = stack.map(({ panel }) => panel);
    const known = stacks.get(panels.join());
    stacks.set(panels.join(), { layers: panels.length, panels, area: area + (known?.area ?? 0) });
  }
  return [...stacks.values()].toSorted((one, other) => other.layers - one.layers || other.area - one.area);
}

/** Counts the layers of both covers of the closed folder, for forms that bend on a spine along y. */
export function closedLayers(pattern: CreasePattern, spots: readonly Spot[]): ClosedLayers {
  const { first, second } = spineLines(pattern);
  const most = (there: readonly Spot[]) =>
    there.reduce((count, { stack }) => Math.max(count, stack.length), 0);
  const front = spots.filter(({ x }) => x < first);
  const back = spots.filter(({ x }) => x > second);
  const besideFront = front.filter(({ right }) => Math.abs(right - first) <= TOUCH);
  const besideBack = back.filter(({ left }) => Math.abs(left - second) <= TOUCH);
  return { atSpine: most(besideFront) + most(besideBack), most: most(front) + most(back) };
}
