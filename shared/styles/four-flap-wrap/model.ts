import { spineFor } from '../../contents/stack.ts';
import { inch, mm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { at } from '../common/dimension.ts';
import { commonPractice, scoresApart } from '../common/practice.ts';
import { about, leastOf, roomOf } from '../common/wishes.ts';
import type { Dimensions, Situation } from '../style.ts';
import { b, dimensionNames, e1, e2, e3, H, s, t, W } from './dimensions.ts';
import type { FourFlapWrapSpec } from './spec.ts';

/**
 * Layers of the sheet around the contents: the base, a side flap, the bottom and the top flap. An enclosure of one piece
 * adds four card thicknesses (NEDCC leaflet 4.6).
 */
export const layers = 4;

/** Common practice, no published source, unless a line says otherwise. */
const practice = Object.freeze({
  hinge: inch(1 / 4),
  /** Side flaps nearly meet, so that they lie in one plane. */
  betweenSides: mm(2),
  leastFlap: mm(20),
  bottomShare: 0.6,
  topShare: 0.7,
  /** Top and bottom flap lie over each other by this at least, or the contents show. */
  overlap: mm(15),
});

/** Everything that limits the dimensions. */
export const boundsOf = (spec: FourFlapWrapSpec, situation: Situation): Bound[] => [
  ...roomBounds(situation.rooms, {
    width: { terms: { [W]: 1, [e1]: 2, [s]: 2 } },
    height: { terms: { [H]: 1, [e2]: 1, [e3]: 1, [b]: 1, [t]: 1 } },
  }),
  ...givenBounds(spec, dimensionNames),
  ...fitBounds(situation),
  ...formBounds(situation),
];

function formBounds({ caliper }: Situation): Bound[] {
  const clear = commonPractice.edgeToScore;
  const hinges = [
    atLeast(
      'hinge scores apart',
      'form',
      { [e1]: 1 },
      Math.max(scoresApart(caliper), spineFor(0, { layers: 2, caliper, ease: 0 })),
      'two scores closer than that are hard to make in this paper',
    ),
    atLeast(
      'bottom hinge around the side flaps',
      'form',
      { [e2]: 1, [e1]: -1 },
      caliper,
      'the bottom flap closes over the side flaps, so its hinge is deeper by the paper',
    ),
    atLeast(
      'top hinge around the bottom flap',
      'form',
      { [e3]: 1, [e2]: -1 },
      caliper,
      'the top flap closes over the bottom flap, so its hinge is deeper by the paper',
    ),
  ];
  const flaps = [
    [s, 'side flap', W],
    [b, 'bottom flap', H],
    [t, 'top flap', H],
  ] as const;
  return [
    ...hinges,
    ...flaps.map(([name, title]) =>
      atLeast(
        `least ${title}`,
        'form',
        { [name]: 1 },
        practice.leastFlap,
        `a shorter ${title} holds nothing`,
      ),
    ),
    atMost(
      'side flaps apart',
      'form',
      { [s]: 2, [W]: -1 },
      -practice.betweenSides,
      'the side flaps must not reach each other',
    ),
    ...flaps
      .slice(1)
      .map(([name, title, along]) =>
        atMost(
          `${title} within panel`,
          'form',
          { [name]: 1, [along]: -1 },
          -clear,
          `the ${title} ends 3 mm short of the hinge across`,
        ),
      ),
    atLeast(
      'flaps overlap',
      'form',
      { [b]: 1, [t]: 1, [H]: -1 },
      practice.overlap,
      'top and bottom flap lie over each other by 15 mm, or the contents show',
    ),
  ];
}

function fitBounds({ demand, caliper, spineEase, foldLoss }: Situation): Bound[] {
  if (!demand) return [];
  const item = demand.itemName;
  // a wall between two folds of 90° has its inside a caliper shorter than it is drawn
  const wall = caliper + 2 * foldLoss;
  return [
    atLeast(
      'base width',
      'fit',
      { [W]: 1 },
      demand.width + demand.easeAcross + wall,
      `the ${item} needs play between the side flaps’ hinges`,
      '/contents',
    ),
    atLeast(
      'base height',
      'fit',
      { [H]: 1 },
      demand.height + demand.easeAlong + wall,
      `the ${item} needs play between the other two hinges`,
      '/contents',
    ),
    atLeast(
      'hinge for the stack',
      'fit',
      { [e1]: 1 },
      spineFor(demand.stack, { layers: 2, caliper, ease: spineEase }),
      'the side flaps’ hinges must be as deep as the stack',
      '/contents',
    ),
    atLeast(
      'top hinge for the stack',
      'fit',
      { [e3]: 1 },
      spineFor(demand.stack, { layers, caliper, ease: spineEase }),
      'the top flap’s hinge must hold the stack and the flaps under it',
      '/contents',
    ),
  ];
}

/** What the solver looks for, in order, and what each would best be. */
export function unknownsOf(situation: Situation): Unknown[] {
  const { demand, prefer } = situation;
  const room = roomOf(situation);
  const thrifty = prefer === 'least-paper';
  const taken = 'that is what the contents take';
  const around = 'that is what lies under it';
  const largest = 'that uses the sheet';
  const most = (d: Dimensions) => at(d, H) - commonPractice.edgeToScore;
  return [
    demand ? leastOf(e1, taken) : about(e1, practice.hinge, 'makers like 1/4 in'),
    leastOf(e2, around),
    leastOf(e3, around),
    demand ? leastOf(W, taken) : about(W, (known) => room.width / 2 - at(known, e1), largest, 'down'),
    demand
      ? leastOf(H, taken)
      : about(
          H,
          (known) =>
            (room.height - at(known, e2) - at(known, e3)) / (1 + practice.bottomShare + practice.topShare),
          largest,
          'down',
        ),
    thrifty
      ? about(s, (known) => at(known, W) / 3, 'a third of the width holds well')
      : about(s, (known) => (at(known, W) - practice.betweenSides) / 2, 'the side flaps nearly meet', 'down'),
    thrifty
      ? leastOf(b, 'a longer flap would only take paper')
      : about(b, (known) => practice.bottomShare * at(known, H), 'the bottom flap reaches past the middle'),
    thrifty
      ? leastOf(t, 'a longer flap would only take paper')
      : about(
          t,
          (known) => Math.min(practice.topShare * at(known, H), most(known)),
          'the top flap covers it',
        ),
  ];
}

/** How far the top flap is from its usual share. */
export const oddness = (d: Dimensions): number => Math.abs(at(d, t) / at(d, H) - practice.topShare);
