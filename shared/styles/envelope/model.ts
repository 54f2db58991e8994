import { glueKeepOut } from '../../creases/glue-keep-out.ts';
import { mm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { at } from '../common/dimension.ts';
import { around, forContents, upTo } from '../common/fit-bounds.ts';
import { commonPractice } from '../common/practice.ts';
import { about, leastOf, roomOf } from '../common/wishes.ts';
import type { Dimensions, Situation } from '../style.ts';
import { b, dimensionNames, f, g, H, s, W } from './dimensions.ts';
import { shape } from './shape.ts';
import type { EnvelopeSpec } from './spec.ts';

/** Layers of the sheet around the contents: front, back and closing flap. */
export const layers = 3;

/** Common practice, no published source, unless a line says otherwise. */
const practice = Object.freeze({
  side: mm(20),
  diagonalSide: 0.47,
  leastDiagonalSide: 0.45,
  backShare: 0.8,
  diagonalBackShare: 0.72,
  leastBackShare: 0.6,
  leastDiagonalBackShare: 0.7,
  leastDiagonalHeight: mm(60),
  flapShare: 0.4,
  /** US Government Paper Specification Standards, V20 and V25: gum at least 13 mm deep from the flap's edge. */
  gum: mm(13),
  leastGum: mm(5),
  /** Side flaps stay this far from each other. */
  betweenSides: mm(4),
});

const { edge, mouth } = glueKeepOut;

const isDiagonal = ({ flaps }: EnvelopeSpec): boolean => flaps === 'diagonal';

/** Everything that limits the dimensions. */
export const boundsOf = (spec: EnvelopeSpec, situation: Situation): Bound[] => [
  ...roomBounds(situation.rooms, {
    width: { terms: { [W]: 1, [s]: 2 } },
    height: { terms: { [H]: 1, [b]: 1, [f]: 1 } },
  }),
  ...givenBounds(spec, dimensionNames),
  ...fitBounds(situation),
  ...formBounds(spec, situation),
];

function formBounds(spec: EnvelopeSpec, { glueWidth }: Situation): Bound[] {
  const clear = commonPractice.edgeToScore;
  return [
    atLeast(
      'least side flap',
      'form',
      { [s]: 1 },
      glueWidth + edge + shape.backTaper + edge,
      'a side flap must hold its glue, clear of its edge and under the back',
      '/glue/width',
    ),
    atMost(
      'side flaps apart',
      'form',
      { [s]: 2, [W]: -1 },
      -practice.betweenSides,
      'the side flaps must not reach each other',
    ),
    ...(isDiagonal(spec)
      ? [
          atLeast(
            'side flap to the seam',
            'form',
            { [s]: 1, [W]: -practice.leastDiagonalSide },
            0,
            'pointed side flaps must reach far enough under the back for a seam',
          ),
          atLeast(
            'height for the seam',
            'form',
            { [H]: 1 },
            practice.leastDiagonalHeight,
            'a lower envelope has no room for diagonal seams',
          ),
        ]
      : []),
    atMost('back within panel', 'form', { [b]: 1, [H]: -1 }, -clear, 'the back ends 3 mm below the mouth'),
    atLeast(
      'back past the middle',
      'form',
      { [b]: 1, [H]: -(isDiagonal(spec) ? practice.leastDiagonalBackShare : practice.leastBackShare) },
      0,
      'a lower back would not hold the sides together',
    ),
    atMost(
      'closing flap within panel',
      'form',
      { [f]: 1, [H]: -1 },
      -clear,
      'the closing flap ends 3 mm above the bottom fold',
    ),
    atLeast(
      'closing flap over the back',
      'form',
      { [f]: 1, [H]: -1, [b]: 1, [g]: -1 },
      mouth + edge,
      'the gum must lie on the back, 3 mm below its edge',
    ),
    atLeast('least gum', 'form', { [g]: 1 }, practice.leastGum, 'narrower gum holds nothing'),
  ];
}

function fitBounds({ demand, foldLoss }: Situation): Bound[] {
  if (!demand) return [];
  const item = demand.itemName;
  return [
    forContents(
      'envelope width',
      W,
      around(demand.width, demand, foldLoss),
      `the envelope must go round the ${item} and its thickness`,
    ),
    forContents(
      'envelope height',
      H,
      upTo(demand.height, demand, 2 * foldLoss),
      `the ${item} needs play between the bottom and the closing flap`,
    ),
  ];
}

/** What the solver looks for, in order, and what each would best be. */
export function unknownsOf(spec: EnvelopeSpec, situation: Situation): Unknown[] {
  const { demand } = situation;
  const room = roomOf(situation);
  const diagonal = isDiagonal(spec);
  const backShare = diagonal ? practice.diagonalBackShare : practice.backShare;
  const taken = 'that is what the contents take';
  const largest = 'that uses the sheet';
  return [
    demand
      ? leastOf(W, taken)
      : about(
          W,
          diagonal ? room.width / (1 + 2 * practice.diagonalSide) : room.width - 2 * practice.side,
          largest,
          'down',
        ),
    demand
      ? leastOf(H, taken)
      : about(H, room.height / (1 + backShare + practice.flapShare), largest, 'down'),
    diagonal
      ? about(s, (known) => practice.diagonalSide * at(known, W), 'the points nearly meet in the middle')
      : about(s, practice.side, 'that is a seam as libraries glue it'),
    about(b, (known) => backShare * at(known, H), 'the back takes that share of the front'),
    about(g, practice.gum, 'gum is to be 13 mm deep'),
    about(f, (known) => practice.flapShare * at(known, H), 'the flap takes that share of the front'),
  ];
}

/** How far the closing flap is from its usual share. */
export const oddness = (d: Dimensions): number => Math.abs(at(d, f) / at(d, H) - practice.flapShare);
