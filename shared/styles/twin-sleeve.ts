import { z } from 'zod';
import { spineFor } from '../contents/stack.ts';
import type { FillStep, FoldProgram, FoldStep, Panel, TuckStep } from '../creases/fold-program.ts';
import { usualGlueWidth } from '../creases/glue-keep-out.ts';
import type { PocketPlace } from '../folding/pockets.ts';
import { length, withUnits } from '../lengths/length-schema.ts';
import { inch, mm, type Nm } from '../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, exactly, type Unknown } from '../solver/bounds.ts';
import { commonShape, measureOfSizes } from '../spec/common.ts';
import type { Dimensions, Model, Situation, Style } from './style.ts';
import { cornerGlue, hemGlue, type SleeveGlue, seamGlue } from './twin-sleeve-glue.ts';
import { sleevePanels, sleeveSeams } from './twin-sleeve-panels.ts';

/*
 * One rectangle becomes a flat sleeve, open at both ends and hemmed there; the sleeve folds on a spine into a
 * book with two pockets. Columns, left to right: hem, panel, spine, panel, hem. Rows, top to bottom: top flap,
 * panel, bottom flap.
 */

const dimension = (description: string) => length.optional().meta({ description });

/** The spec of a twin sleeve. */
export const twinSleeveSpec = withUnits(
  {
    style: z.literal('twin-sleeve').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...commonShape,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of a cover, from hem to spine.'),
            height: dimension('Height of a cover.'),
          })
          .optional()
          .meta({ description: 'One cover of the closed folder.' }),
        spine: dimension('Distance between the two spine scores.'),
        hem: dimension('Depth of the hems at the two pocket mouths.'),
        topFlap: dimension('Height of the flap that folds down.'),
        bottomFlap: dimension('Height of the flap that folds up.'),
        overlap: dimension('How far the two flaps lie over each other at the seam.'),
      })
      .optional()
      .meta({ description: 'Dimensions to keep exactly; the solver finds the others.' }),
    hem: z
      .strictObject({
        turn: z.enum(['out', 'in']).meta({
          description: 'Hems fold to the outside face, a band in the inside print, or in and out of sight.',
        }),
      })
      .optional()
      .meta({ description: 'The hems at the two pocket mouths.' }),
    seam: z.enum(['tucked', 'flat']).optional().meta({
      description:
        'Whether the hems of the two flaps are slipped into each other at the ends (the default), or the bottom flap just lies over the top flap.',
    }),
    corners: z
      .enum(['folded', 'mitred'])
      .optional()
      .meta({ description: 'Corners are folded in before the hems (the default), or cut away.' }),
  },
  measureOfSizes,
);

export type TwinSleeveSpec = z.output<typeof twinSleeveSpec>;

/** Common practice, no published source, unless a line says otherwise. */
const practice = Object.freeze({
  /** Glue stays this far from each edge of what it holds. */
  glueMargin: mm(1.5),
  hem: inch(1 / 2),
  overlap: inch(1 / 2),
  spine: inch(1 / 2),
  /** Two scores closer than this are hard to make: 1/8 in, as cover printers advise. */
  scoreSpacing: mm(3.2),
  /** Width of a scoring tool's tip. */
  scoringTip: mm(1),
  /** A sheet that is larger than the blank by less than this cannot be trimmed well. */
  sliver: mm(3),
  /** A free edge stays this far from the next score. */
  edgeToScore: mm(3),
  /** Share of the panel that a hem or the top flap takes where there is a choice. */
  hemShare: 0.42,
  deepestHemShare: 0.5,
  topFlapShare: 0.43,
  deepestOverlapShare: 1 / 3,
  /** An item rattles with more play than this. */
  mostPlay: inch(3 / 4),
});

const W = 'panel.width';
const H = 'panel.height';
const S = 'spine';
const h = 'hem';
const o = 'overlap';
const t = 'topFlap';
const b = 'bottomFlap';

const dimensionNames = [
  { name: W, title: 'panel width' },
  { name: H, title: 'panel height' },
  { name: S, title: 'spine' },
  { name: h, title: 'hem' },
  { name: t, title: 'top flap' },
  { name: b, title: 'bottom flap' },
  { name: o, title: 'overlap' },
] as const;

const at = (dimensions: Dimensions, name: string): Nm => {
  const value = dimensions[name];
  if (value === undefined) throw new Error(`the twin sleeve has no dimension ${name}`);
  return value;
};

const blank = (d: Dimensions) => ({
  width: 2 * at(d, W) + at(d, S) + 2 * at(d, h),
  height: 2 * at(d, H) + at(d, o),
});

function givenBounds(spec: TwinSleeveSpec): Bound[] {
  const given = spec.dimensions;
  const rows = [
    ['panel width', { [W]: 1 }, given?.panel?.width, '/dimensions/panel/width'],
    ['panel height', { [H]: 1 }, given?.panel?.height, '/dimensions/panel/height'],
    ['spine', { [S]: 1 }, given?.spine, '/dimensions/spine'],
    ['hem', { [h]: 1 }, given?.hem, '/dimensions/hem'],
    ['top flap', { [t]: 1 }, given?.topFlap, '/dimensions/topFlap'],
    ['bottom flap', { [H]: 1, [o]: 1, [t]: -1 }, given?.bottomFlap, '/dimensions/bottomFlap'],
    ['overlap', { [o]: 1 }, given?.overlap, '/dimensions/overlap'],
  ] as const;
  return rows.flatMap(([name, terms, value, path]) =>
    value === undefined ? [] : exactly(name, terms as Record<string, number>, value, path),
  );
}

function formBounds({ glueWidth, caliper }: Situation): Bound[] {
  const tab = glueWidth + 2 * practice.glueMargin;
  // a crease is 1.5 calipers and the tool's tip wide; common practice, as is one caliper beside each
  const apart = Math.max(practice.scoreSpacing, Math.round(3.5 * caliper) + practice.scoringTip);
  const empty = spineFor(0, { layers: twinSleeve.layers, caliper, ease: 0 });
  const clear = practice.edgeToScore;
  return [
    atLeast(
      'least hem',
      'form',
      { [h]: 1 },
      tab,
      'a hem must hold its glue with 1.5 mm to spare on each side',
      '/glue/width',
    ),
    atLeast(
      'least overlap',
      'form',
      { [o]: 1 },
      tab,
      'the seam must hold its glue with 1.5 mm to spare on each side',
      '/glue/width',
    ),
    atMost(
      'hem within panel',
      'form',
      { [h]: 1, [W]: -1 },
      -clear,
      'a hem ends 3 mm short of the spine score',
    ),
    atMost(
      'hem within top flap',
      'form',
      { [h]: 1, [t]: -1 },
      0,
      'a corner must not reach the top flap’s score',
    ),
    atMost(
      'hem within bottom flap',
      'form',
      { [h]: 1, [t]: 1, [H]: -1, [o]: -1 },
      0,
      'a corner must not reach the bottom flap’s score',
    ),
    atMost(
      'top flap within panel',
      'form',
      { [t]: 1, [H]: -1 },
      -clear,
      'the top flap ends 3 mm short of the bottom fold',
    ),
    atMost(
      'bottom flap within panel',
      'form',
      { [o]: 1, [t]: -1 },
      0,
      'the bottom flap ends at the top fold at the latest',
    ),
    atLeast(
      'spine scores apart',
      'form',
      { [S]: 1 },
      apart,
      'two scores closer than that are hard to make in this paper',
    ),
    atLeast(
      'spine of the empty folder',
      'form',
      { [S]: 1 },
      empty,
      'the spine must hold the folder’s own layers',
    ),
  ];
}

function roomBounds(situation: Situation): Bound[] {
  return situation.rooms.flatMap(({ name, width, height, path }) => [
    atMost(`${name} width`, 'room', { [W]: 2, [S]: 1, [h]: 2 }, width, `the ${name} is no wider`, path),
    atMost(`${name} height`, 'room', { [H]: 2, [o]: 1 }, height, `the ${name} is no higher`, path),
  ]);
}

function fitBounds(situation: Situation): Bound[] {
  const { demand, caliper, spineEase, foldLoss } = situation;
  if (!demand) return [];
  // a panel has a fold at both of its ends
  const across = demand.width + demand.easeAcross + 2 * foldLoss;
  const along = demand.height + demand.inPocket + demand.easeAlong + 2 * foldLoss;
  const spine = spineFor(demand.stack, { layers: twinSleeve.layers, caliper, ease: spineEase });
  const item = demand.itemName;
  return [
    atLeast(
      'pocket width',
      'fit',
      { [W]: 1 },
      across,
      `the ${item} needs play between the spine and the pocket’s mouth`,
      '/contents',
    ),
    atLeast(
      'pocket height',
      'fit',
      { [H]: 1 },
      along,
      `the pocket must go round the ${item} and its stack`,
      '/contents',
    ),
    atLeast(
      'spine for the stack',
      'fit',
      { [S]: 1 },
      spine,
      'the spine must hold both stacks and the folder’s own layers',
      '/contents',
    ),
  ];
}

function unknowns(situation: Situation): Unknown[] {
  const { grid, gridGiven } = situation;
  const fill = situation.prefer === 'whole-sheet';
  const roomWidth = Math.min(...situation.rooms.map((room) => room.width));
  const roomHeight = Math.min(...situation.rooms.map((room) => room.height));
  const hasDemand = situation.demand !== undefined;
  return [
    {
      name: S,
      wish: ({ least }) => {
        if (!hasDemand) return { value: practice.spine, snap: 'nearest', why: 'makers like 1/2 in' };
        const snapped = grid > 0 ? Math.ceil(least / grid) * grid : least;
        // two equal hems share what is left of the width: an odd step would leave a sliver to trim
        const odd = fill && grid > 0 && (roomWidth - snapped) % (2 * grid) === grid;
        return odd
          ? {
              value: snapped + grid,
              snap: 'nearest',
              why: 'that is what the stack takes, and a step more so that the hems use up the sheet’s width',
            }
          : { value: least, snap: 'up', why: 'that is what the stack takes' };
      },
    },
    {
      name: W,
      wish: ({ least }, known) =>
        hasDemand
          ? { value: least, snap: 'up', why: 'that is what the pocket takes' }
          : {
              value: (roomWidth - at(known, S)) / (2 + 2 * practice.hemShare),
              snap: 'nearest',
              why: 'panels and hems share the sheet’s width in the style’s proportions',
            },
    },
    {
      name: H,
      wish: ({ least }) => {
        const whole = (roomHeight - practice.overlap) / 2;
        if (!hasDemand) return { value: whole, snap: 'down', why: 'that uses the sheet’s height' };
        return fill
          ? {
              value: Math.min(whole, least + practice.mostPlay),
              snap: 'down',
              why: 'that uses the sheet’s height without letting the contents rattle',
            }
          : { value: least, snap: 'up', why: 'that is what the pocket takes' };
      },
    },
    {
      name: o,
      wish: (_, known) => {
        const spare = roomHeight - 2 * at(known, H);
        const deepest = practice.deepestOverlapShare * at(known, H);
        if (!fill || spare <= practice.overlap)
          return { value: practice.overlap, snap: 'nearest', why: 'makers like 1/2 in for a seam' };
        // no score lies at the seam, so it may take what is left to the last fraction
        return spare <= deepest
          ? { value: spare, snap: 'exact', why: 'the seam takes the height that is left' }
          : { value: deepest, snap: 'down', why: 'a deeper seam would only add bulk' };
      },
    },
    {
      name: h,
      wish: (_, known) => {
        const spare = (roomWidth - 2 * at(known, W) - at(known, S)) / 2;
        const deepest = practice.deepestHemShare * at(known, W);
        if (!fill) return { value: practice.hem, snap: 'nearest', why: 'makers like 1/2 in for a hem' };
        const onGrid = grid > 0 ? Math.floor(spare / grid) * grid : spare;
        const exact = !gridGiven && spare <= deepest && 2 * (spare - onGrid) < practice.sliver;
        return exact
          ? { value: spare, snap: 'exact', why: 'the hems take the width that is left' }
          : { value: Math.min(spare, deepest), snap: 'down', why: 'the hems take the width that they may' };
      },
    },
    {
      name: t,
      wish: (_, known) => ({
        value: practice.topFlapShare * at(known, H),
        snap: 'nearest',
        why: 'the seam lies a little above the middle',
      }),
    },
  ];
}

const panels = (d: Dimensions): Panel[] =>
  sleevePanels(
    { 'left hem': at(d, h), front: at(d, W), spine: at(d, S), back: at(d, W), 'right hem': at(d, h) },
    { 'top flap': at(d, t), '': at(d, H), 'bottom flap': at(d, b) },
  );

/** At each end the hems of the two flaps are slipped into each other, which holds the seam while it is glued. */
function tucks(spec: TwinSleeveSpec): TuckStep[] {
  if (spec.seam === 'flat') return [];
  return ['left hem', 'right hem'].map((hem) => ({
    kind: 'tuck',
    name: `tuck at the ${hem}`,
    // Hems turned out lie over their flap, so the top flap's closes over the bottom flap; turned in, the
    // bottom flap's hem lies under it and goes under the top flap.
    ...(spec.hem?.turn === 'in'
      ? { panel: `bottom flap, ${hem}`, to: 'below', of: `top flap, ${hem}` }
      : { panel: `top flap, ${hem}`, to: 'above', of: `bottom flap, ${hem}` }),
  }));
}

/** Without contents in the spec there is nothing to slide in. */
const fill = ({ contents }: TwinSleeveSpec): FillStep[] =>
  contents === undefined
    ? []
    : [{ kind: 'fill', name: 'contents', pockets: twinSleeve.pockets.map(({ name }) => name) }];

function program(spec: TwinSleeveSpec, d: Dimensions): FoldProgram {
  const { width, height } = blank(d);
  const hem = at(d, h);
  const mitred = spec.corners === 'mitred';
  const point = (x: number, y: number) => ({ x, y });
  const vertical = (x: number) => ({ from: point(x, 0), to: point(x, height) });
  const horizontal = (y: number) => ({ from: point(0, y), to: point(width, y) });
  const fold = (name: string, rest: Pick<FoldStep, 'line' | 'moving'> & Partial<FoldStep>): FoldStep => ({
    kind: 'fold',
    name,
    direction: 'toward',
    angle: 180,
    ...rest,
  });
  const corner = (name: string, x: number, y: number): FoldStep => {
    const line = { from: point(Math.abs(x - hem), y), to: point(x, Math.abs(y - hem)) };
    return fold(name, { line, moving: point(x, y) });
  };
  const corners = [
    corner('top left corner', 0, 0),
    corner('top right corner', width, 0),
    corner('bottom right corner', width, height),
    corner('bottom left corner', 0, height),
  ];
  const turn = spec.hem?.turn === 'in' ? 'toward' : 'away';
  const firstSpine = hem + at(d, W);
  const secondSpine = firstSpine + at(d, S);
  const bottomFold = at(d, t) + at(d, H);
  const sleeve: SleeveGlue = {
    panelWidth: at(d, W),
    panelHeight: at(d, H),
    spine: at(d, S),
    hem,
    topFlap: at(d, t),
    bottomFlap: at(d, b),
    overlap: at(d, o),
    hemsOut: spec.hem?.turn !== 'in',
    tucked: spec.seam !== 'flat',
    mitred,
    glueWidth: spec.glue?.width ?? usualGlueWidth,
  };
  const tips = corners.flatMap(({ line }, index) =>
    index % 2 === 0 ? [line.to, line.from] : [line.from, line.to],
  );
  return {
    outline: mitred ? tips : [point(0, 0), point(width, 0), point(width, height), point(0, height)],
    panels: panels(d),
    steps: [
      ...(mitred ? [] : corners),
      ...cornerGlue(sleeve),
      fold('left hem', { line: vertical(hem), moving: point(0, height / 2), direction: turn }),
      fold('right hem', { line: vertical(width - hem), moving: point(width, height / 2), direction: turn }),
      ...hemGlue(sleeve),
      fold('top flap', { line: horizontal(at(d, t)), moving: point(width / 2, 0) }),
      fold('bottom flap', { line: horizontal(bottomFold), moving: point(width / 2, height) }),
      ...tucks(spec),
      ...seamGlue(sleeve),
      fold('spine at the front', { line: vertical(firstSpine), moving: point(0, height / 2), angle: 90 }),
      fold('spine at the back', {
        line: vertical(secondSpine),
        moving: point(width, height / 2),
        angle: 90,
      }),
      ...fill(spec),
    ],
  };
}

function pocket(cover: 'front' | 'back', end: 'left' | 'right'): PocketPlace {
  const flaps = ['top flap', 'bottom flap'];
  return {
    name: `${cover} pocket`,
    panel: cover,
    behind: [`${end} hem`],
    front: flaps.flatMap((flap) => [`${flap}, ${cover}`, `${flap}, ${end} hem`, `${flap}, spine`]),
    mouth: end,
  };
}

/** The first style: a hemmed sleeve that folds on a spine into a book with two pockets. */
export const twinSleeve: Style<TwinSleeveSpec> = {
  name: 'twin-sleeve',
  title: 'Twin sleeve',
  summary:
    'One rectangle becomes a flat sleeve, hemmed at its two open ends, and folds on a spine into a book with two pockets.',
  dimensionNames,
  pockets: [pocket('front', 'left'), pocket('back', 'right')],
  seams: sleeveSeams,
  layers: 6,
  givenSpine: (spec) => spec.dimensions?.spine,
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  spine: (d) => at(d, S),
  model: (spec, situation): Model => ({
    unknowns: unknowns(situation),
    bounds: [
      ...roomBounds(situation),
      ...givenBounds(spec),
      ...fitBounds(situation),
      ...formBounds(situation),
    ],
  }),
  dimensions: (values) => ({ ...values, [b]: at(values, H) + at(values, o) - at(values, t) }),
  blank,
  closed: (d) => ({ width: at(d, W), height: at(d, H) }),
  flat: (d) => ({ width: 2 * at(d, W) + at(d, S), height: at(d, H) }),
  pocket: (d) => ({ width: at(d, W), height: at(d, H) }),
  oddness: (d) =>
    Math.abs(at(d, h) / at(d, W) - practice.hemShare) + Math.abs(at(d, t) / at(d, H) - practice.topFlapShare),
  program,
};
