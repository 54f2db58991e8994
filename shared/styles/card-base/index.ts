import type { FoldProgram, FoldStep } from '../../creases/fold-program.ts';
import { mm, type Nm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds, givenIn } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { foldAlong, panelOf, programOn, rectangle } from '../common/blank.ts';
import { cardBounds } from '../common/card-size.ts';
import { at } from '../common/dimension.ts';
import { about, leastOf, roomOf } from '../common/wishes.ts';
import type { Dimensions, Situation } from '../style.ts';
import { withSpec } from '../with-spec.ts';
import { dimensionNames, g, H, n, W } from './dimensions.ts';
import { foldOf, panelCount, panelsOf, stepsOf } from './panels.ts';
import { type CardBaseSpec, cardBaseSpec } from './spec.ts';

/* Panels beside each other, folded along upright lines: once, to and fro, rolled up, or two doors over a middle. */

/** Common practice, no published source, unless a line says otherwise. */
const practice = Object.freeze({
  least: mm(30),
  /** Besides the paper, by hand: inner panels are made 1.0 to 1.6 mm narrower. */
  nesting: mm(1),
  mostStep: mm(5),
  /** Doors of a gate are kept 3 to 15 mm apart, as printers say. */
  gap: mm(3),
  mostGap: mm(15),
  /** Panels narrower than this cannot be folded. */
  leastPanel: mm(15),
});

/** The blank's width in panels, steps and gaps. */
function widthTerms(spec: CardBaseSpec): Record<string, number> {
  if (foldOf(spec) === 'gate') return { [W]: 2, [g]: -1 };
  const count = panelCount(spec);
  return { [W]: count, [n]: -stepsOf(count) };
}

function boundsOf(spec: CardBaseSpec, { rooms, caliper }: Situation): Bound[] {
  const fold = foldOf(spec);
  const count = panelCount(spec);
  const least: Nm = fold === 'roll' && count > 2 ? caliper + practice.nesting : 0;
  return [
    ...roomBounds(rooms, { width: { terms: widthTerms(spec) }, height: { terms: { [H]: 1 } } }),
    ...givenBounds(spec, dimensionNames),
    ...cardBounds(spec, W, H),
    atLeast('least width', 'form', { [W]: 1 }, practice.least, 'a narrower card cannot be folded well'),
    atLeast('least height', 'form', { [H]: 1 }, practice.least, 'a lower card cannot be folded well'),
    atLeast('least step', 'form', { [n]: 1 }, least, 'a rolled panel must lie within the one around it'),
    ...(fold === 'roll' && count > 2
      ? [
          atMost(
            'most step',
            'form',
            { [n]: 1 },
            practice.mostStep,
            'a larger step leaves the back uncovered',
          ),
          atMost(
            'innermost panel',
            'form',
            { [n]: count - 2, [W]: -1 },
            -practice.leastPanel,
            'the innermost panel must be wide enough to fold',
          ),
        ]
      : [atMost('no step', 'form', { [n]: 1 }, 0, 'only a roll has narrower panels')]),
    ...(fold === 'gate'
      ? [
          atLeast('least gap', 'form', { [g]: 1 }, 0, 'the doors must not lie over each other'),
          atMost('most gap', 'form', { [g]: 1 }, practice.mostGap, 'doors further apart would not close'),
        ]
      : [
          atLeast('no gap', 'form', { [g]: 1 }, 0, 'only a gate has doors'),
          atMost('no gap', 'form', { [g]: 1 }, 0, 'only a gate has doors'),
        ]),
  ];
}

function unknownsOf(spec: CardBaseSpec, situation: Situation): Unknown[] {
  const room = roomOf(situation);
  const { [W]: panels = 1, ...less } = widthTerms(spec);
  const saved = (known: Dimensions) =>
    Object.entries(less).reduce((sum, [name, factor]) => sum - factor * at(known, name), 0);
  return [
    leastOf(n, foldOf(spec) === 'roll' ? 'that is what the paper takes' : 'only a roll has narrower panels'),
    about(g, foldOf(spec) === 'gate' ? practice.gap : 0, 'doors are kept 3 mm apart'),
    about(W, (known) => (room.width + saved(known)) / panels, 'that uses the sheet', 'down'),
    about(H, room.height, 'that uses the sheet', 'down'),
  ];
}

/** What the half open card stands at. */
const ajar = 100;

function program(spec: CardBaseSpec, d: Dimensions): FoldProgram {
  const height = at(d, H);
  const panels = panelsOf(spec, d);
  const lefts = panels.map((_, index) => panels.slice(0, index).reduce((sum, { width }) => sum + width, 0));
  const end = (lefts.at(-1) ?? 0) + (panels.at(-1)?.width ?? 0);
  const zigzag = foldOf(spec) === 'zigzag';
  // the first panel folds from the left, all others from the right, the outermost first
  const folds = panels.slice(1).map((panel, index): FoldStep => {
    const x = lefts[index + 1] ?? 0;
    const isFirst = index === 0;
    return foldAlong(
      isFirst ? (panels[0]?.name ?? '') : panel.name,
      [
        [x, 0],
        [x, height],
      ],
      [isFirst ? 0 : end, height / 2],
      { direction: zigzag && index % 2 === 1 ? 'away' : 'toward', ajar },
    );
  });
  const [first, ...others] = folds;
  return programOn(
    panels.map(({ name, width }, index) => {
      const left = lefts[index] ?? 0;
      return panelOf(name, rectangle(left, 0, left + width, height));
    }),
    [...others.toReversed(), ...(first ? [first] : [])],
  );
}

const size = (d: Dimensions): { readonly width: Nm; readonly height: Nm } => ({
  width: at(d, W),
  height: at(d, H),
});

/** Cards with one fold or more. */
export const cardBase = withSpec(cardBaseSpec, {
  name: 'card-base',
  title: 'Card base',
  summary: 'A card with one fold, or with several panels: to and fro, rolled up, or two doors over a middle.',
  words: {
    piece: 'card',
    flat: 'folded card',
    ready: 'closed',
    ajar: { heading: 'standing, half open', description: 'The card stands half open' },
    sizedBy: 'the width and height of a panel, or give a card',
  },
  dimensionNames,
  pockets: [],
  seams: [],
  face: 'back',
  covers: [
    { name: 'front', side: 'inside' },
    { name: 'back', side: 'outside' },
  ],
  pose: { turned: 36, tipped: 22 },
  layers: 2,
  saysHowLarge: (spec) =>
    spec.card !== undefined || (givenIn(spec, W) !== undefined && givenIn(spec, H) !== undefined),
  model: (spec, situation) => ({ unknowns: unknownsOf(spec, situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => values,
  blank: (d, spec) => ({
    width: panelsOf(spec, d).reduce((sum, { width }) => sum + width, 0),
    height: at(d, H),
  }),
  closed: (d, spec) => ({ ...size(d), layers: foldOf(spec) === 'gate' ? 2 : panelCount(spec) }),
  flat: size,
  oddness: () => 0,
  program,
});
