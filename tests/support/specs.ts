import fc from 'fast-check';
import { inch, mm, type Nm } from '../../shared/lengths/nanometres.ts';
import { sizesOfKind } from '../../shared/sizes/catalogue.ts';
import { Length, type SpecUnits, type Spelling, type Unspelt, type UnspeltObject } from './spelling.ts';

/** A generated spec before its lengths are written, and how to write them. */
export interface Generated {
  readonly spec: UnspeltObject;
  readonly spelling: Spelling;
}

/*
 * Dimensions come first, from what goes in and from the bounds of the form; the sheet follows from the blank.
 * So nearly every spec can be folded, and the solver is asked to find again what is known to be there.
 */

const share = fc.double({ min: 0, max: 1, noNaN: true });
const maybe = <T>(arb: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(arb, { nil: undefined });
const switchOf = maybe(fc.boolean());

/** What lengths are multiples of: whole and half millimetres, inch fractions, or any nanometre at all. */
const step = fc.constantFrom<Nm>(mm(1), mm(0.5), inch(1 / 8), inch(1 / 16), inch(1 / 64), mm(0.01), 1);

const fromTo = (least: Nm, most: Nm, part: number, by: Nm): Nm =>
  Math.ceil((least + part * (most - least)) / by) * by;

const colour = fc.constantFrom('#CC79A7', '#d55e00', '#009E73', '#000000', '#0072b2', '#FFFFFF');
const lineType = fc.constantFrom('continuous', 'dashed', 'dotted', 'long-dashed dotted');
const lengthBetween = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.oneof(
    fc.integer({ min: Math.ceil(least * 20), max: Math.floor(most * 20) }).map((n) => new Length(mm(n / 20))),
    fc.integer({ min: mm(least), max: mm(most) }).map((nm) => new Length(nm)),
  );

const order = fc.integer({ min: 0, max: 99 });
const layer = (paint: readonly string[]): fc.Arbitrary<UnspeltObject> =>
  fc.record({
    colour: maybe(colour),
    width: maybe(lengthBetween(0.05, 1.5)),
    lineType: maybe(lineType),
    order: maybe(order),
    off: fc.constantFrom(undefined, undefined, undefined, undefined, undefined, false, true),
    paint: maybe(fc.constantFrom(...paint)),
  });

const open = layer(['stroke']);
const closed = layer(['stroke', 'fill']);

const seldom = <T>(arb: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: 4, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: arb });

export const conventions: fc.Arbitrary<UnspeltObject> = fc.record({
  layers: maybe(
    fc.record({
      score: maybe(open),
      scoreValley: maybe(open),
      scoreMountain: maybe(open),
      knockout: maybe(closed),
      cut: maybe(closed),
      guide: seldom(open),
      guideGlue: seldom(open),
      guideBare: seldom(open),
      guideKeepOut: seldom(open),
    }),
  ),
  rootUnit: maybe(fc.constantFrom('mm', 'in', 'px')),
  userUnit: maybe(fc.constantFrom('mm', '1/96 in', '1/72 in')),
  outline: maybe(fc.constantFrom('auto', 'always', 'never')),
  score: maybe(
    fc.record({
      as: maybe(fc.constantFrom('crease', 'perforation')),
      inset: maybe(fc.oneof(fc.constant(new Length(0)), lengthBetween(0.1, 12))),
      cut: maybe(lengthBetween(0.5, 12)),
      tie: maybe(lengthBetween(0.5, 12)),
    }),
  ),
  sheetLies: maybe(fc.constantFrom('inside-up', 'outside-up')),
});

const thickness = fc.record({
  caliper: maybe(lengthBetween(0.1, 0.5)),
  grammage: maybe(fc.integer({ min: 60, max: 350 })),
  basisWeight: maybe(fc.constantFrom({ pounds: 65, grade: 'cover' }, { pounds: 24, grade: 'bond' })),
  bulk: maybe(fc.constantFrom(0.8, 1, 1.25, 1.5)),
});

const choices = fc.record({
  step,
  shares: fc.array(share, { minLength: 12, maxLength: 12 }),
  fixed: fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom('all', 'all but the seam', 'contents only') },
    {
      weight: 3,
      arbitrary: fc.subarray(['width', 'height', 'spine', 'hem', 'topFlap', 'overlap', 'bottomFlap'], {
        minLength: 1,
      }),
    },
  ),
  contents: maybe(
    fc.record({
      item: fc.constantFrom('measured', 'measured', 'iso-a6', 'us-a2', 'iso-a7'),
      envelope: maybe(
        fc.record({ caliper: maybe(lengthBetween(0.08, 0.2)), lining: maybe(lengthBetween(0.08, 0.15)) }),
      ),
      form: maybe(fc.constantFrom('folded', 'flat')),
      caliper: maybe(lengthBetween(0.2, 0.5)),
      mats: maybe(fc.array(lengthBetween(0.1, 0.4), { maxLength: 3 })),
      raised: maybe(lengthBetween(0.2, 3)),
      perPocket: maybe(fc.integer({ min: 1, max: 4 })),
      thickness: maybe(lengthBetween(0.5, 4)),
      packing: maybe(fc.constantFrom('pressed', 'loose')),
      turned: switchOf,
    }),
  ),
  stock: fc.constantFrom('measured', 'measured', 'measured', 'size', 'list', 'none'),
  sheetSpare: fc.constantFrom<readonly [number, number]>(
    [0, 0],
    [0.3, 0.5],
    [0, 0.6],
    [5, 0],
    [20, 35],
    [90, 60],
  ),
  sheetLies: fc.boolean(),
  square: fc.constantFrom(false, false, false, true),
  paper: thickness,
  oneWay: switchOf,
  printPair: fc.constantFrom(undefined, 'same-way', 'head-to-foot'),
  foldFactor: fc.constantFrom(undefined, -0.2, 0, 0.3, 1),
  turned: switchOf,
  cutter: maybe(
    fc.record({ spare: fc.constantFrom(0, 4, 60), margin: maybe(lengthBetween(0, 8)), lies: fc.boolean() }),
  ),
  grid: fc.constantFrom<Unspelt | undefined>(
    undefined,
    'none',
    new Length(mm(1)),
    new Length(mm(0.5)),
    new Length(mm(5)),
    new Length(inch(1 / 16)),
    new Length(inch(1 / 8)),
  ),
  prefer: fc.constantFrom(undefined, 'whole-sheet', 'least-paper'),
  glue: maybe(lengthBetween(2, 9)),
  ease: maybe(
    fc.record({
      along: maybe(lengthBetween(0, 6)),
      across: maybe(lengthBetween(0, 10)),
      spine: maybe(lengthBetween(0, 3)),
    }),
  ),
  corners: fc.constantFrom(undefined, 'folded', 'mitred'),
  hem: fc.constantFrom(undefined, { turn: 'out' }, { turn: 'in' }),
  seam: fc.constantFrom(undefined, 'tucked', 'flat'),
  convention: maybe(conventions),
  units: fc.constantFrom<SpecUnits>(undefined, 'mm', 'cm', 'in'),
  pick: fc.nat(1000),
});

type Choices = typeof choices extends fc.Arbitrary<infer T> ? T : never;

/** The dimensions of a twin sleeve in nanometres. */
interface Base {
  readonly width: Nm;
  readonly height: Nm;
  readonly spine: Nm;
  readonly hem: Nm;
  readonly topFlap: Nm;
  readonly overlap: Nm;
}

const nmOf = (length: Length | undefined, otherwise: Nm): Nm => length?.nm ?? otherwise;

/** Lengths that no paper here exceeds, so that what is built around them can always be folded. */
const thickest = { sheet: mm(0.6), card: mm(0.5), envelope: mm(0.2) };

interface Load {
  readonly spec: UnspeltObject;
  readonly least: { readonly width: Nm; readonly height: Nm; readonly spine: Nm };
}

function cardOf(id: string) {
  const card = sizesOfKind('card').find((size) => size.id === id);
  if (!card) throw new Error(`no card is called ${id}`);
  return card;
}

function loadOf(chosen: Choices): Load | undefined {
  const { contents: c, shares, step: by } = chosen;
  const wanted =
    c ?? (chosen.fixed === 'contents only' ? ({ item: 'iso-a6' } as NonNullable<typeof c>) : undefined);
  if (!wanted) return undefined;
  const published = wanted.item === 'measured' ? undefined : cardOf(wanted.item);
  const card = published ?? {
    width: fromTo(mm(50), mm(130), shares[0] ?? 0, by),
    height: fromTo(mm(60), mm(170), shares[1] ?? 0, by),
  };
  const outer = wanted.envelope ? { width: card.width + mm(6), height: card.height + mm(6) } : card;
  const layers = 2 * nmOf(wanted.caliper, thickest.card);
  const mats = (wanted.mats ?? []).reduce((sum, { nm }) => sum + nm, 0);
  const cover = wanted.envelope ? 4 * thickest.envelope + nmOf(wanted.envelope.lining, 0) : 0;
  const set = nmOf(wanted.thickness, Math.ceil((layers + mats + cover) * 1.4) + nmOf(wanted.raised, 0));
  const inPocket = set * (wanted.perPocket ?? 1);
  const [across, along] = wanted.turned === true ? [outer.height, outer.width] : [outer.width, outer.height];
  const sides = ({ width, height }: { width: Nm; height: Nm }) => ({
    width: new Length(width),
    height: new Length(height),
  });
  return {
    least: {
      // the paper's own thickness takes its share at every fold
      width: across + nmOf(chosen.ease?.across, mm(6)) + 4 * thickest.sheet,
      height: along + inPocket + nmOf(chosen.ease?.along, mm(3)) + 4 * thickest.sheet,
      spine: 2 * inPocket + 8 * thickest.sheet + nmOf(chosen.ease?.spine, mm(1)),
    },
    spec: {
      item: {
        ...(published ? { size: published.id } : sides(card)),
        form: wanted.form,
        caliper: wanted.caliper,
        mats: wanted.mats,
        raised: wanted.raised,
      },
      envelope: wanted.envelope && { ...sides(outer), ...wanted.envelope },
      perPocket: wanted.perPocket,
      thickness: wanted.thickness,
      packing: wanted.packing,
      turned: wanted.turned,
    },
  };
}

/** Dimensions that keep every bound of the form: see the style's own bounds. */
function baseOf({ shares, step: by, glue }: Choices, load: Load | undefined): Base {
  const part = (index: number): number => shares[index] ?? 0;
  const tab = nmOf(glue, inch(1 / 4)) + mm(3);
  const hem = fromTo(tab, tab + mm(35), part(2), by);
  const width = fromTo(
    Math.max(hem + mm(3), load?.least.width ?? 0),
    Math.max(hem, load?.least.width ?? 0) + mm(70),
    part(3),
    by,
  );
  const spine = fromTo(
    Math.max(mm(3.2), load?.least.spine ?? 0),
    (load?.least.spine ?? 0) + mm(25),
    part(4),
    by,
  );
  const overlap = fromTo(tab, tab + mm(25), part(5), by);
  const flap = Math.max(hem, overlap);
  const topFlap = fromTo(flap, flap + mm(50), part(6), by);
  const panel = Math.max(topFlap + mm(3), topFlap + hem - overlap, load?.least.height ?? 0);
  return { hem, width, spine, overlap, topFlap, height: fromTo(panel, panel + mm(60), part(7), by) };
}

function dimensionsOf({ fixed }: Choices, base: Base): UnspeltObject | undefined {
  if (fixed === 'contents only') return undefined;
  const { width, height, spine, hem, topFlap, overlap } = base;
  const names =
    fixed === 'all'
      ? ['width', 'height', 'spine', 'hem', 'topFlap', 'overlap']
      : fixed === 'all but the seam'
        ? ['width', 'height', 'spine', 'hem', 'topFlap', 'bottomFlap']
        : fixed;
  const keep = (name: string, value: Nm): Length | undefined =>
    names.includes(name) ? new Length(value) : undefined;
  return {
    panel:
      names.includes('width') || names.includes('height')
        ? { width: keep('width', width), height: keep('height', height) }
        : undefined,
    spine: keep('spine', spine),
    hem: keep('hem', hem),
    topFlap: keep('topFlap', topFlap),
    bottomFlap: keep('bottomFlap', height + overlap - topFlap),
    overlap: keep('overlap', overlap),
  };
}

function stockOf(
  chosen: Choices,
  blank: { readonly width: Nm; readonly height: Nm },
  contents: boolean,
): Unspelt | undefined {
  const { stock, sheetSpare, oneWay, paper, printPair, foldFactor } = chosen;
  // without contents something else has to say how large the folder is to be
  if (stock === 'none' && (contents || chosen.fixed === 'all')) return undefined;
  const turned = chosen.turned ?? (oneWay === true ? false : undefined);
  const across = turned ?? chosen.sheetLies;
  const [spareAcross, spareDown] = sheetSpare;
  const wide = blank.width + mm(spareAcross);
  const high = blank.height + mm(spareDown);
  const [width, height] = chosen.square
    ? [Math.max(wide, high), Math.max(wide, high)]
    : across
      ? [high, wide]
      : [wide, high];
  const more = { ...paper, oneWay, printPair, foldFactor, turned: chosen.turned };
  const measured = {
    name: 'Harbour chart paper',
    width: new Length(width),
    height: new Length(height),
    ...more,
  };
  if (stock === 'measured' || stock === 'none') return measured;
  const published = sizesOfKind('sheet').find((size) => size.width >= width && size.height >= height);
  const named = published ? { size: published.id, ...more } : measured;
  if (stock === 'size') return named;
  return [{ width: new Length(mm(90)), height: new Length(mm(120)) }, named, measured];
}

function cutterOf(
  { cutter }: Choices,
  blank: { readonly width: Nm; readonly height: Nm },
): UnspeltObject | undefined {
  if (!cutter) return undefined;
  const free = mm(cutter.spare) + 2 * nmOf(cutter.margin, 0);
  const [width, height] = cutter.lies ? [blank.height, blank.width] : [blank.width, blank.height];
  return { width: new Length(width + free), height: new Length(height + free), margin: cutter.margin };
}

function build(chosen: Choices): Generated {
  const load = loadOf(chosen);
  const base = baseOf(chosen, load);
  const blank = {
    width: 2 * base.width + base.spine + 2 * base.hem,
    height: 2 * base.height + base.overlap,
  };
  return {
    spec: {
      style: 'twin-sleeve',
      contents: load?.spec,
      stock: stockOf(chosen, blank, load !== undefined),
      dimensions: dimensionsOf(chosen, base),
      hem: chosen.hem,
      corners: chosen.corners,
      seam: chosen.seam,
      cutter: cutterOf(chosen, blank),
      grid: chosen.grid,
      prefer: chosen.prefer,
      glue: chosen.glue && { width: chosen.glue },
      ease: chosen.ease,
      knockouts: chosen.pick % 5 === 0 ? [] : undefined,
      convention: chosen.convention,
    },
    spelling: { units: chosen.units, pick: chosen.pick },
  };
}

/** Specs of twin sleeves over every option; most of them can be folded. */
export const specs: fc.Arbitrary<Generated> = choices.map(build);
