import { describe, expect, test } from 'vitest';
import type { FoldStep, Panel } from '../../shared/creases/fold-program.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { graphFaults } from '../../shared/folding/graph-faults.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { foldAlong, panelOf, panelOfPieces, programOn, rectangle } from '../../shared/styles/common/blank.ts';

/*
 * A cross of five squares of 10 mm, and an L: blanks that are not convex, made up of their panels.
 */

const square = (name: string, left: number, top: number): Panel =>
  panelOf(name, rectangle(mm(left), mm(top), mm(left + 10), mm(top + 10)));

const cross = [
  square('middle', 10, 10),
  square('left', 0, 10),
  square('right', 20, 10),
  square('top', 10, 0),
  square('bottom', 10, 20),
];

const at = (x: number, y: number) => [mm(x), mm(y)] as const;
const foldLeft = (rest: Partial<FoldStep> = {}) =>
  foldAlong('left', [at(10, 0), at(10, 30)], at(0, 15), rest);

function letters(
  steps: readonly FoldStep[],
  panels: readonly Panel[] = cross,
): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const { letter } of unfold(programOn(panels, steps)).edges) counts[letter] = (counts[letter] ?? 0) + 1;
  return counts;
}

describe('a blank made up of panels', () => {
  test('is flat where nothing is folded, and has its outline', () => {
    const program = programOn(cross, []);
    expect(program.outline).toHaveLength(12);
    const pattern = unfold(program);
    expect(graphFaults(pattern, program.outline)).toEqual([]);
    expect(letters([])).toEqual({ B: 12, F: 4 });
  });

  test('is creased only where a fold parts two panels', () => {
    expect(letters([foldLeft()])).toEqual({ B: 12, F: 3, V: 1 });
    expect(letters([foldLeft({ direction: 'away', angle: 90 })])).toEqual({ B: 12, F: 3, M: 1 });
  });

  test('bends a crease the other way where the paper lies turned over', () => {
    // once its arm lies on the middle, a line through both creases the arm against its lay
    const half = foldAlong('half', [at(0, 15), at(30, 15)], at(15, 30));
    const pattern = unfold(programOn(cross, [foldLeft(), half]));
    const made = pattern.edges.filter(({ step }) => step === 1);
    expect(made.map(({ letter }) => letter).toSorted()).toEqual(['M', 'V', 'V']);
  });

  test('divides an edge at a corner that another panel has on it', () => {
    const wide = panelOf('wide', rectangle(0, 0, mm(30), mm(10)));
    const tab = panelOf('tab', [at(5, 10), at(15, 10), at(13, 16), at(7, 16)]);
    const program = programOn([wide, tab], []);
    // four corners of the strip, two where the tab begins, two of its own
    expect(program.outline).toHaveLength(8);
    expect(letters([], [wide, tab])).toEqual({ B: 8, F: 1 });
  });

  test('moves only the panels that are named', () => {
    const both = foldAlong('level', [at(0, 20), at(30, 20)], at(15, 30), { only: ['bottom'] });
    const lies = unfold(programOn(cross, [both]));
    expect(lies.edges.filter(({ letter }) => letter === 'V')).toHaveLength(1);
  });

  test('is refused where a fold would tear it', () => {
    const tears = foldAlong('tear', [at(12, 0), at(12, 30)], at(0, 15), { only: ['left'] });
    expect(() => unfold(programOn(cross, [tears]))).toThrow('“tear” would tear the sheet between');
  });

  test('is refused where its panels are no single piece, or only touch', () => {
    expect(() => programOn([square('one', 0, 0), square('other', 40, 40)], [])).toThrow('no single piece');
    expect(() => programOn([square('one', 0, 0), square('other', 10, 10)], [])).toThrow(/piece|touches/u);
  });

  test('takes corners in either order', () => {
    const backward = panelOfPieces('middle', [[...rectangle(mm(10), mm(10), mm(20), mm(20))].toReversed()]);
    expect(letters([foldLeft()], [backward, ...cross.slice(1)])).toEqual({ B: 12, F: 3, V: 1 });
  });
});
