import type { ValuedBox, ValuedLayout } from './best-value.ts';
import { posesWithin, type Spot } from './box.ts';
import { guillotineTable } from './guillotine-table.ts';
import { heapBy } from './heap.ts';
import { mostByArea } from './most-by-area.ts';
import { outerBound } from './outer-bound.ts';

/** A rectangle built up from boxes by putting two smaller ones side by side or one on the other. */
interface Build {
  readonly width: number;
  readonly height: number;
  readonly value: number;
  readonly counts: readonly number[];
  readonly bound: number;
  readonly made:
    | { readonly box: number; readonly turned: boolean }
    | readonly [Build, Build, 'beside' | 'above'];
}

/**
 * The most valuable layout that straight cuts from edge to edge can yield, of counted boxes: builds are joined, the most
 * promising first, until none can lead to more. What surrounds a build is bounded by {@link outerBound}.
 * Source: Viswanathan & Bagchi, Oper. Res. 41 (1993) 768-776; Hifi, Comput. Oper. Res. 24 (1997) 727-736
 * (both from memory).
 * @param maxBuilds the search gives up, unproved, after so many builds
 */
export function bestGuillotine(
  boxes: readonly ValuedBox[],
  width: number,
  height: number,
  maxBuilds: number,
): ValuedLayout {
  const byArea = mostByArea(boxes, width * height);
  const table = guillotineTable(boxes, width, height, true, (w, h) => byArea(w * h));
  const outer = outerBound(table, width, height);
  const boundOf = (w: number, h: number, value: number) =>
    value + Math.min(outer(w, h), byArea(width * height - w * h));
  const open = heapBy<Build>((build) => build.bound);
  const closed: Build[] = [];
  const seen = new Map<string, { readonly width: number; readonly height: number }[]>();
  let best: Build | undefined;
  let builds = 0;

  const add = (build: Omit<Build, 'bound'>): void => {
    const bound = boundOf(build.width, build.height, build.value);
    if (bound <= (best?.value ?? 0)) return;
    const key = build.counts.join(' ');
    const alike = seen.get(key) ?? [];
    if (alike.some((other) => other.width <= build.width && other.height <= build.height)) return;
    seen.set(key, [...alike, build]);
    const kept = { ...build, bound };
    if (kept.value > (best?.value ?? 0)) best = kept;
    open.push(kept);
    builds++;
  };

  boxes.forEach((box, index) => {
    if (box.count === 0) return;
    for (const pose of posesWithin(box, width, height))
      add({
        width: pose.width,
        height: pose.height,
        value: box.value,
        counts: boxes.map((_, other) => (other === index ? 1 : 0)),
        made: { box: index, turned: pose.turned },
      });
  });
  let left = 0;
  for (let build = open.pop(); build !== undefined; build = open.pop()) {
    if (build.bound <= (best?.value ?? 0)) break;
    if (builds > maxBuilds) {
      left = build.bound;
      break;
    }
    closed.push(build);
    for (const other of closed) {
      if (build.width + other.width > width && build.height + other.height > height) continue;
      const counts = joined(build.counts, other.counts, boxes);
      if (counts === undefined) continue;
      const value = build.value + other.value;
      if (build.width + other.width <= width)
        add({
          width: build.width + other.width,
          height: Math.max(build.height, other.height),
          value,
          counts,
          made: [build, other, 'beside'],
        });
      if (build.height + other.height <= height)
        add({
          width: Math.max(build.width, other.width),
          height: build.height + other.height,
          value,
          counts,
          made: [build, other, 'above'],
        });
    }
  }
  const value = best?.value ?? 0;
  const bound = Math.max(value, left);
  return {
    value,
    spots: best === undefined ? [] : spotsOf(best, boxes, 0, 0),
    bound: table.complete ? bound : Number.POSITIVE_INFINITY,
    proved: table.complete && bound === value,
    nodes: builds,
  };
}

function joined(
  one: readonly number[],
  other: readonly number[],
  boxes: readonly ValuedBox[],
): readonly number[] | undefined {
  const counts: number[] = [];
  for (let index = 0; index < one.length; index++) {
    const count = (one[index] as number) + (other[index] as number);
    if (count > (boxes[index] as ValuedBox).count) return undefined;
    counts.push(count);
  }
  return counts;
}

function spotsOf({ made, width, height }: Build, boxes: readonly ValuedBox[], x: number, y: number): Spot[] {
  if (!Array.isArray(made)) {
    const { box, turned } = made as Exclude<Build['made'], readonly unknown[]>;
    return [{ box, x, y, width, height, turned }];
  }
  const [first, second, where] = made as Extract<Build['made'], readonly unknown[]>;
  return [
    ...spotsOf(first, boxes, x, y),
    ...(where === 'beside'
      ? spotsOf(second, boxes, x + first.width, y)
      : spotsOf(second, boxes, x, y + first.height)),
  ];
}
