import { beforeAll, describe, expect, it } from 'vitest';
import { inch, mm } from '../../shared/lengths/nanometres.ts';
import { type Drawn, mustDraw } from '../support/drawn.ts';
import { type At, pathsIn, type ReadSvg } from '../support/read-svg.ts';
import { type Sample, sampleDrawings } from '../support/sampled.ts';
import { sleeveSpec } from '../support/sleeve-spec.ts';
import { Length, type Spelling, spell, type UnspeltObject } from '../support/spelling.ts';

/** What must come out when one thing in a spec changes, whatever the rest of the spec is. */

const SEED = 1979;
let samples: readonly Sample[];

beforeAll(() => {
  const sampled = sampleDrawings(220, SEED);
  expect(sampled.failures.slice(0, 3)).toEqual([]);
  samples = sampled.samples;
}, 120_000);

/** Two roundings to 0.001 mm, one in each drawing. */
const EXACT = 0.0011;

interface Line {
  readonly id: string;
  readonly points: readonly At[];
}

/** Every stretch of every path under its path's id, in millimetres. */
const linesOf = ({ groups }: ReadSvg): readonly Line[] =>
  groups.flatMap((group) =>
    pathsIn(group).flatMap(({ id, subpaths }) =>
      subpaths.map(({ pieces }) => ({ id, points: pieces.flatMap((piece) => [...piece]) })),
    ),
  );

/** The first line that differs, or undefined. */
function difference(drawn: Drawn, other: Drawn, move: (p: At, from: ReadSvg) => At): string | undefined {
  const [lines, others] = [linesOf(drawn.read), linesOf(other.read)];
  if (lines.length !== others.length) return `${lines.length} lines and ${others.length}`;
  const different = lines.find(({ id, points }, index) => {
    const counterpart = others[index];
    return (
      counterpart?.id !== id ||
      points.some((p, at) => {
        const there = counterpart.points[at];
        const moved = move(p, drawn.read);
        return !there || Math.abs(moved.x - there.x) > EXACT || Math.abs(moved.y - there.y) > EXACT;
      })
    );
  });
  return different && `${different.id} differs`;
}

const stay = (p: At): At => p;
const mirror = (p: At, { width }: ReadSvg): At => ({ x: width - p.x, y: p.y });
const clockwise = (p: At, { height }: ReadSvg): At => ({ x: height - p.y, y: p.x });
const anticlockwise = (p: At, { width }: ReadSvg): At => ({ x: p.y, y: width - p.x });

const conventionOf = (spec: UnspeltObject): UnspeltObject => (spec.convention ?? {}) as UnspeltObject;

const withConvention = (spec: UnspeltObject, more: UnspeltObject): UnspeltObject => ({
  ...spec,
  convention: { ...conventionOf(spec), ...more },
});

const drawWith = (spec: UnspeltObject, spelling: Spelling): Drawn => mustDraw(spell(spec, spelling));

/** Expects no faults, and enough cases to mean something. */
function expectFaultless(faults: readonly (string | undefined)[], least: number): void {
  expect(faults.filter((fault) => fault !== undefined).slice(0, 3)).toEqual([]);
  expect(faults.length).toBeGreaterThanOrEqual(least);
}

describe('a drawing', () => {
  it('of a sheet that lies outside up is the mirrored drawing', () => {
    const faults = samples.map(({ generated: { spec, spelling } }) => {
      const up = drawWith(withConvention(spec, { sheetLies: 'inside-up' }), spelling);
      const down = drawWith(withConvention(spec, { sheetLies: 'outside-up' }), spelling);
      const fault = difference(up, down, mirror);
      return fault && `${fault}: ${JSON.stringify(up.raw)}`;
    });
    expectFaultless(faults, 180);
  });

  it('for a sheet that lies across is the drawing turned by a quarter', () => {
    const faults = samples.flatMap(({ generated: { spec, spelling } }) => {
      const { stock, cutter } = spec;
      if (!isObject(stock) || !(stock.width instanceof Length) || !(stock.height instanceof Length))
        return [];
      if (stock.width.nm === stock.height.nm || (cutter && isSquare(cutter))) return [];
      const mirrored = conventionOf(spec).sheetLies === 'outside-up';
      return [true, false].flatMap((turned) => {
        const upright = attempt({ ...spec, stock: { ...stock, turned } }, spelling);
        if (!upright) return [];
        const across = drawWith(
          {
            ...spec,
            stock: { ...stock, width: stock.height, height: stock.width, turned: !turned },
            cutter: isObject(cutter) ? { ...cutter, width: cutter.height, height: cutter.width } : undefined,
          },
          spelling,
        );
        const nowTurned = across.plan.arrangement.drawingTurned;
        // a mirror reverses the sense of a turn, and so does going back
        const move = nowTurned === mirrored ? anticlockwise : clockwise;
        const fault = difference(upright, across, move);
        return [fault && `${fault}: ${JSON.stringify(upright.raw)}`];
      });
    });
    expectFaultless(faults, 80);
  });

  it('is the same in millimetres in every root unit and user unit', () => {
    const units = ['mm', 'in', 'px'].flatMap((rootUnit) =>
      ['mm', '1/96 in', '1/72 in'].map((userUnit) => ({ rootUnit, userUnit })),
    );
    const some = samples.filter((_, index) => index % 8 === 0);
    const faults = some.flatMap(({ generated: { spec, spelling }, drawn }) =>
      units.map((unit) => {
        const fault = difference(drawn, drawWith(withConvention(spec, unit), spelling), stay);
        return fault && `${fault} in ${Object.values(unit)}: ${JSON.stringify(drawn.raw)}`;
      }),
    );
    expectFaultless(faults, 200);
  });

  it('is the same bytes when a spec’s lengths are written in other exact units', () => {
    const faults = samples.flatMap(({ generated: { spec, spelling }, drawn }) =>
      // with `units` given, the spec thinks in the same measure however its lengths are written
      (spelling.units === undefined ? [] : [1, 3]).map((more) => {
        const other = drawWith(spec, { ...spelling, pick: spelling.pick + more });
        return other.svg === drawn.svg
          ? undefined
          : `${JSON.stringify(drawn.raw)} and ${JSON.stringify(other.raw)}`;
      }),
    );
    expectFaultless(faults, 250);
  });

  it('is the same bytes in millimetres and in centimetres', () => {
    const faults = samples.map(({ generated: { spec, spelling } }) => {
      const [one, other] = (['mm', 'cm'] as const).map((units) => drawWith(spec, { ...spelling, units }));
      return one?.svg === other?.svg ? undefined : JSON.stringify(one?.raw);
    });
    expectFaultless(faults, 180);
  });

  it('of given dimensions alone does not depend on the grid, or on what to do with paper to spare', () => {
    const all = ['spine', 'hem', 'topFlap', 'overlap'] as const;
    const faults = samples.flatMap(({ generated: { spec, spelling }, drawn }) => {
      const given = sleeveSpec(drawn.plan).dimensions;
      if (!given?.panel?.width || !given.panel.height || all.some((name) => given[name] === undefined))
        return [];
      // a grid in inches would change the measure of a spec that does not name its own
      const same = { ...spelling, units: spelling.units ?? 'mm' } as const;
      const before = drawWith(spec, same);
      return [
        { grid: 'none' },
        { grid: new Length(inch(1 / 8)) },
        { grid: new Length(mm(7)) },
        { prefer: 'whole-sheet' },
        { prefer: 'least-paper' },
      ].map((change) =>
        drawWith({ ...spec, ...change }, same).svg === before.svg
          ? undefined
          : JSON.stringify([change, before.raw]),
      );
    });
    expectFaultless(faults, 180);
  });

  it('has other positions where only the units’ names change: the comparison can fail', () => {
    const spec = {
      style: 'twin-sleeve',
      dimensions: { panel: { width: 4, height: 6 } },
      stock: { width: 20, height: 20 },
    };
    const inches = mustDraw({ ...spec, units: 'in' });
    const centimetres = mustDraw({ ...spec, units: 'cm' });
    expect(difference(inches, centimetres, stay)).toMatch(/differs|lines/u);
    expect(difference(inches, inches, mirror)).toMatch(/differs/u);
    expect(difference(inches, inches, clockwise)).toMatch(/differs/u);
    expect(difference(inches, inches, stay)).toBeUndefined();
  });
});

const isObject = (value: unknown): value is UnspeltObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && !(value instanceof Length);

const isSquare = (cutter: unknown): boolean =>
  isObject(cutter) &&
  cutter.width instanceof Length &&
  cutter.height instanceof Length &&
  cutter.width.nm === cutter.height.nm;

function attempt(spec: UnspeltObject, spelling: Spelling): Drawn | undefined {
  try {
    return drawWith(spec, spelling);
  } catch {
    return undefined;
  }
}
