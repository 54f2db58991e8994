import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawFolder } from '../../shared/drawing/draw-folder.ts';
import type { Drawing, Score } from '../../shared/drawing/drawing.ts';
import { offText, onInchRule, onMetricRule } from '../../shared/guide/positions.ts';
import { scoringOf } from '../../shared/guide/scoring.ts';
import { inch, mm } from '../../shared/lengths/nanometres.ts';
import { easySleeve, foldedFrom, sleeves } from '../support/sleeves.ts';

const lengthOf = ({ points }: Score): number => {
  const [from, to] = [points[0], points.at(-1)];
  return from && to ? Math.hypot(to.x - from.x, to.y - from.y) : 0;
};

const total = (drawing: Drawing): number =>
  [...drawing.valleys, ...drawing.mountains].reduce((sum, score) => sum + lengthOf(score), 0);

describe('scores on a board', () => {
  test('of a sleeve with easy numbers: vertical 30, 130, 140, 240, then horizontal 60 and 210', () => {
    const { passes, slanted } = scoringOf(drawFolder(foldedFrom(easySleeve)));
    expect(passes.map(({ home, scores }) => [home, scores.map(({ at }) => at / 1e6)])).toEqual([
      ['left', [30, 130, 140, 240]],
      ['top', [60, 210]],
    ]);
    expect(passes.flatMap(({ scores }) => scores).every(({ whole }) => whole)).toBe(true);
    expect(slanted).toHaveLength(4);
  });

  test('cover every score of the drawing once, in ascending order, on the sheet', () => {
    fc.assert(
      fc.property(sleeves, (spec) => {
        const drawing = drawFolder(foldedFrom(spec));
        const { passes, slanted } = scoringOf(drawing);
        const onBoard = passes.flatMap(({ scores }) =>
          scores.flatMap(({ stretches }) => stretches.map(([from, to]) => to - from)),
        );
        const aslant = slanted.map(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y));
        const sum = [...onBoard, ...aslant].reduce((one, other) => one + other, 0);
        expect(Math.abs(sum - total(drawing))).toBeLessThan(1000);
        for (const { home, scores } of passes) {
          const positions = scores.map(({ at }) => at);
          expect(positions).toEqual(positions.toSorted((one, other) => one - other));
          expect(new Set(positions).size).toBe(positions.length);
          const most = home === 'left' ? drawing.width : drawing.height;
          for (const at of positions) expect(at > 0 && at < most).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('positions on a rule', () => {
  test.each([
    [inch(1.75), '1 3/4', 'exact', '44', '−0.45 mm'],
    [mm(30), '1 3/16', '+0.16 mm', '30', 'exact'],
    [inch(5.75), '5 3/4', 'exact', '146', '−0.05 mm'],
    [inch(1 / 64), '0', '−0.4 mm', '0', '−0.4 mm'],
  ])('%d nm', (length, inchText, inchOff, metricText, metricOff) => {
    const [imperial, metric] = [onInchRule(length), onMetricRule(length)];
    expect([imperial.text, offText(imperial.off)]).toEqual([inchText, inchOff]);
    expect([metric.text, offText(metric.off)]).toEqual([metricText, metricOff]);
  });

  test('the mark and how far it is off give the position back, and the mark is the nearest', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: mm(1000) }), (length) => {
        expect(Math.abs(onInchRule(length).off)).toBeLessThanOrEqual(inch(1 / 32));
        const { text, off } = onMetricRule(length);
        expect(mm(Number(text)) - off).toBe(length);
        expect(Math.abs(off)).toBeLessThanOrEqual(mm(0.5));
      }),
    );
  });
});
