import { describe, expect, test } from 'vitest';
import { plainMarks } from '../../shared/views/move-marks.ts';
import { stepScenes } from '../../shared/views/step-scenes.ts';
import type { ViewName } from '../../shared/views/view-name.ts';
import { type ExampleName, folded, shown } from './shown.ts';

type Way = 'up' | 'down' | 'left' | 'right';

/** Where each print arrow of a picture points, by panel and face; corners of a hem come second. */
function arrowsIn(name: ExampleName, view: ViewName): Readonly<Record<string, readonly Way[]>> {
  const found: Record<string, Way[]> = {};
  for (const mark of plainMarks(shown(name, view).marks)) {
    if (mark.kind !== 'arrow' || mark.arrow !== 'print' || mark.part === undefined) continue;
    const [x, y] = [mark.to.x - mark.from.x, mark.to.y - mark.from.y];
    const way = Math.abs(y) > Math.abs(x) ? (y < 0 ? 'up' : 'down') : x < 0 ? 'left' : 'right';
    const key = `${mark.part}: ${mark.paper}`;
    found[key] = [...(found[key] ?? []), way];
  }
  return found;
}

/*
 * By hand. The prints' up is up the open sheet. A fold over an upright line keeps up and swaps left and right, one
 * over a level line turns up to down, one at 45° makes a corner's up point along the sheet's edge:
 *   top left corner: the line from (h, 0) to (0, h) takes (x, y) to (h - y, h - x), so up (0, -1) becomes (1, 0),
 *   to the right; the hem's upright fold makes that left; the flap's level fold leaves it.
 * The other corners follow by mirroring. Seen from outside, left and right are swapped.
 */
describe('hems turned out', () => {
  test('seen from outside everything points up, the hems in the inside print', () => {
    expect(arrowsIn('hems-out', 'outside')).toEqual({
      'front: outside': ['up'],
      'spine: outside': ['up'],
      'back: outside': ['up'],
      'left hem: inside': ['up'],
      'right hem: inside': ['up'],
    });
  });

  test('seen from inside the flaps and their hems stand on their heads, the corners lie', () => {
    expect(arrowsIn('hems-out', 'inside')).toEqual({
      'top flap, front: outside': ['down'],
      'top flap, spine: outside': ['down'],
      'top flap, back: outside': ['down'],
      'bottom flap, front: outside': ['down'],
      'bottom flap, spine: outside': ['down'],
      'bottom flap, back: outside': ['down'],
      'top flap, left hem: inside': ['down'],
      'top flap, right hem: inside': ['down'],
      'bottom flap, left hem: inside': ['down'],
      'bottom flap, right hem: inside': ['down'],
      'top flap, left hem: outside': ['left'],
      'top flap, right hem: outside': ['right'],
      'bottom flap, left hem: outside': ['right'],
      'bottom flap, right hem: outside': ['left'],
    });
  });

  test('the covers of the closed folder point up', () => {
    expect(arrowsIn('hems-out', 'closed')).toEqual({
      'front: outside': ['up'],
      'left hem: inside': ['up'],
      'back: outside': ['up'],
      'right hem: inside': ['up'],
    });
  });

  test('half open the cover points up and the pocket down', () => {
    expect(arrowsIn('hems-out', 'half-open')).toMatchObject({
      'front: outside': ['up'],
      'left hem: inside': ['up'],
      'bottom flap, back: outside': ['down'],
      'bottom flap, right hem: inside': ['down'],
    });
  });
});

describe('hems turned in', () => {
  test('only the outside print is seen: up from outside, down on the pockets', () => {
    expect(arrowsIn('hems-in', 'outside')).toEqual({
      'front: outside': ['up'],
      'spine: outside': ['up'],
      'back: outside': ['up'],
    });
    const inside = arrowsIn('hems-in', 'inside');
    expect(
      Object.keys(inside).every((key) => /^(?:top|bottom) flap, (?:front|spine|back): outside$/.test(key)),
    ).toBe(true);
    expect(new Set(Object.values(inside).flat())).toEqual(new Set(['down']));
  });
});

test('prints that run head to foot: the hems of the pockets stand upright, those of the covers do not', () => {
  expect(arrowsIn('head-to-foot', 'inside')).toMatchObject({
    'bottom flap, front: outside': ['down'],
    'bottom flap, left hem: inside': ['up'],
  });
  expect(arrowsIn('head-to-foot', 'outside')).toMatchObject({
    'front: outside': ['up'],
    'left hem: inside': ['down'],
  });
});

test('a blank that lies a quarter turned on the sheet: the print lies on its side', () => {
  /*
   * The blank is turned clockwise, so the sheet's up points to the blank's left, seen from inside; that is right
   * seen from outside. A hem's upright fold swaps the two.
   */
  expect(arrowsIn('turned', 'outside')).toMatchObject({
    'front: outside': ['right'],
    'back: outside': ['right'],
    'left hem: inside': ['left'],
  });
  expect(arrowsIn('turned', 'inside')).toMatchObject({ 'bottom flap, front: outside': ['left'] });
});

describe('fold steps', () => {
  const moves = (name: ExampleName, view: ViewName) =>
    plainMarks(shown(name, view).marks).flatMap((mark) =>
      // the legend explains arrows by arrows of its own, which come last
      mark.kind === 'arrow' && mark.arrow !== 'print' ? [mark] : [],
    )[0];
  const lines = (name: ExampleName, view: ViewName) =>
    new Set(plainMarks(shown(name, view).marks).flatMap((mark) => (mark.kind === 'line' ? [mark.line] : [])));

  test.each([
    // corners 1 to 4, their glue 5, hems 6 and 7, their glue 8, flaps 9 and 10, tucks 11 and 12, seam 13, spine 14
    // and 15; corners turned in have no glue of their own
    ['hems-out', 'step-1', 'toward', 'right and down'],
    ['hems-out', 'step-3', 'toward', 'left and up'],
    ['hems-out', 'step-6', 'away', 'right'],
    ['hems-in', 'step-5', 'toward', 'right'],
    ['hems-out', 'step-7', 'away', 'left'],
    ['hems-out', 'step-9', 'toward', 'down'],
    ['hems-out', 'step-10', 'toward', 'up'],
    ['hems-out', 'step-11', 'toward', 'down'],
    ['hems-in', 'step-10', 'away', 'up'],
    ['hems-out', 'step-14', 'toward', 'right'],
    ['hems-out', 'step-15', 'toward', 'left'],
    ['mitred', 'step-1', 'away', 'right'],
  ] as const)('%s, %s: the part moves %s, %s', (name, view, arrow, way) => {
    const move = moves(name, view);
    if (!move) throw new Error('nothing moves');
    const [x, y] = [move.to.x - move.from.x, move.to.y - move.from.y];
    const words = [x > 0.5 ? 'right' : x < -0.5 ? 'left' : '', y > 0.5 ? 'down' : y < -0.5 ? 'up' : ''];
    expect(move.arrow).toBe(arrow);
    expect(words.filter(Boolean).join(' and ')).toBe(way);
  });

  test('the line to fold is a valley toward the maker and a mountain away', () => {
    expect(lines('hems-out', 'step-9')).toContain('valley');
    expect(lines('hems-out', 'step-9')).not.toContain('mountain');
    expect(lines('hems-out', 'step-6')).toContain('mountain');
    expect(lines('hems-out', 'step-6')).not.toContain('valley');
  });

  test('the seam is there once the flaps meet, and not before', () => {
    expect(lines('hems-out', 'step-10')).not.toContain('seam');
    expect(lines('hems-out', 'step-11')).toContain('seam');
    expect(lines('hems-out', 'inside')).toContain('seam');
    expect(lines('hems-out', 'outside')).not.toContain('seam');
  });
});

describe('glue and contents', () => {
  const strips = (name: ExampleName, view: ViewName) =>
    plainMarks(shown(name, view).marks)
      .filter((mark) => mark.kind === 'glue')
      // the legend's sample comes last
      .slice(0, -1)
      .map(({ outline }) => ({ x: spread(outline.map(({ x }) => x)), y: spread(outline.map(({ y }) => y)) }));
  const spread = (values: readonly number[]) => ({ from: Math.min(...values), to: Math.max(...values) });
  const round = (value: number) => Math.round(value * 1000) / 1000;

  test('every strip is drawn in its step, and in no other', () => {
    const { steps } = folded('hems-out').program;
    for (const [index, step] of steps.entries())
      expect(strips('hems-out', `step-${index + 1}`), step.name).toHaveLength(
        step.kind === 'glue' ? step.strips.length : 0,
      );
  });

  test('strips lie on the page where they lie on the paper', () => {
    // hems turned in, at 45 % of real size: panels of 101.6 mm, hems of 44.45 mm, a top flap of 63.5 mm
    const { ratio } = stepScenes(folded('hems-in'), { width: 260, height: 138 })[6] ?? {};
    const [hem] = strips('hems-in', 'step-7');
    const picture = shown('hems-in', 'step-7');
    const paper = spread(
      plainMarks(picture.marks).flatMap((mark) =>
        mark.kind === 'face' && mark.part !== 'legend' ? mark.outline.map(({ x }) => x) : [],
      ),
    );
    if (!hem || ratio === undefined) throw new Error('no strip is drawn');
    // its far edge is 1.5 mm short of the hem's edge, 44.45 mm from the mouth
    expect(round((hem.x.to - paper.from) / ratio)).toBe(42.95);
    expect(round((hem.x.to - hem.x.from) / ratio)).toBe(6.35);
  });

  test('contents slide in through both mouths, each toward the spine', () => {
    const arrows = plainMarks(shown('hems-out', 'step-16').marks).flatMap((mark) =>
      mark.kind === 'arrow' && mark.arrow === 'into' ? [mark] : [],
    );
    const [front, back] = arrows;
    if (!front || !back) throw new Error('nothing slides in');
    expect(front.to.x - front.from.x).toBeGreaterThan(9);
    expect(back.to.x - back.from.x).toBeLessThan(-9);
    expect(front.to.x).toBeLessThan(back.to.x);
    expect([front.from.y, back.from.y]).toEqual([front.to.y, back.to.y]);
    // these two and the legend's
    expect(arrows).toHaveLength(3);
  });
});

test('contents are drawn at their true size, standing as the plan turns them', () => {
  const picture = shown('hems-out', 'inside');
  const outlines = plainMarks(picture.marks).flatMap((mark) =>
    mark.kind === 'line' && mark.line === 'contents' ? mark.lines : [],
  );
  // the legend's sample is the last
  expect(outlines).toHaveLength(3);
  for (const outline of outlines.slice(0, 2)) {
    const xs = outline.map(({ x }) => x);
    const ys = outline.map(({ y }) => y);
    // drawn at 85 % of 3 5/8 in by 5 1/8 in
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(0.85 * 3.625 * 25.4, 6);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(0.85 * 5.125 * 25.4, 6);
  }
});
