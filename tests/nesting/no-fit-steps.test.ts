import { expect, test } from 'vitest';
import { mm } from '../../shared/lengths/nanometres.ts';
import { apartBound } from '../../shared/nesting/apart-bound.ts';
import type { Control, Steps, StopRequest } from '../../shared/nesting/control.ts';
import { fillByOutline, placeRules } from '../../shared/nesting/fill-by-outline.ts';
import { jobsOf } from '../../shared/nesting/job.ts';
import { type NestInput, nestSpec } from '../../shared/nesting/nest-spec.ts';
import { noFit } from '../../shared/nesting/no-fit.ts';
import { areaOf, outlineJob } from '../../shared/nesting/outline-job.ts';
import { type NoFits, noFitCache } from '../../shared/nesting/stance.ts';

/** A star of five points within a square. */
const star = (side: number): NestInput['pieces'][number] => {
  const points = Array.from({ length: 10 }, (_, index) => {
    const [radius, at] = [index % 2 === 0 ? 0.5 : 0.25, (2 * Math.PI * index) / 10];
    return { x: 0.5 + radius * Math.sin(at), y: 0.5 - radius * Math.cos(at) };
  });
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const outline = points.map(({ x, y }) => ({
    x: Math.round((x - left) * side),
    y: Math.round((y - top) * side),
  }));
  const [width, height] = [Math.max(...outline.map(({ x }) => x)), Math.max(...outline.map(({ y }) => y))];
  return { name: `star ${side}`, width, height, count: 3, paper: 'card', outline };
};

const spec = nestSpec.parse({
  pieces: [star(mm(90)), star(mm(80)), star(mm(30))],
  sheets: [{ paper: 'card', width: mm(105), height: mm(105) }],
});
const [job] = jobsOf(spec);
if (!job) throw new Error('no job');

type Work = (noFits: NoFits, control: Control) => Steps<unknown>;
const bound: Work = (noFits, control) => apartBound(spec, job, control, noFits);
const filling: Work = (noFits, control) => {
  const none = () => {
    throw new Error('nothing is left over here');
  };
  const all = outlineJob(spec, job, none);
  return fillByOutline(areaOf(all, 0), [3, 3, 3], [0, 1, 2], all.stances, noFits, placeRules.lowest, control);
};

/** No-fit polygons worked out in each step, until `stopAfter` of them were and the caller asks for an end. */
function workIn(work: Work, stopAfter: number, request: StopRequest = 'time limit'): readonly number[] {
  let count = 0;
  const noFits = noFitCache((other, piece) => {
    count++;
    return noFit(other, piece);
  });
  const steps = work(noFits, { paper: 'card', limit: 1000, evaluations: 0, sheets: 0, bound: 0 });
  const each: number[] = [];
  for (;;) {
    const before = count;
    const step = steps.next(count >= stopAfter ? request : undefined);
    each.push(count - before);
    if (step.done === true) return each;
  }
}

const sum = (numbers: readonly number[]) => numbers.reduce((all, number) => all + number, 0);

test.each<[string, Work]>([
  ['a bound', bound],
  ['filling a sheet', filling],
])('%s: no step works out more than one no-fit polygon, and none after a stop', (_, work) => {
  const each = workIn(work, Number.POSITIVE_INFINITY);
  expect(sum(each)).toBeGreaterThan(5);
  expect(Math.max(...each)).toBe(1);
  for (const stopAfter of [0, 1, 5]) expect(sum(workIn(work, stopAfter))).toBe(stopAfter);
});

test('a bound of many kinds works out so many no-fit polygons and no more', () => {
  const sides = Array.from({ length: 12 }, (_, index) => mm(90 - index));
  const many = nestSpec.parse({ ...spec, pieces: sides.map(star) });
  const [all] = jobsOf(many);
  if (!all) throw new Error('no job');
  expect(
    sum(workIn((noFits, control) => apartBound(many, all, control, noFits), Number.POSITIVE_INFINITY)),
  ).toBe(40);
});
