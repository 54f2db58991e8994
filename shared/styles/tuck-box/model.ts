import { spineFor } from '../../contents/stack.ts';
import { mm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { leastTab } from '../common/bottom-pocket.ts';
import { at } from '../common/dimension.ts';
import { leastLockedTab, lockedPaper } from '../common/lock.ts';
import { about, leastOf, roomOf } from '../common/wishes.ts';
import type { Situation } from '../style.ts';
import { D, dimensionNames, f, g, H, k, l, W } from './dimensions.ts';
import { leastTonguedHeight } from './panels.ts';
import type { TuckBoxSpec } from './spec.ts';

/** Layers of the sheet around the contents: the front, and at the back the tab and the back. */
export const layers = 3;

/** Common practice, no published source, unless a line says otherwise. */
const practice = Object.freeze({
  depth: mm(25),
  leastLid: mm(8),
  /** A lid that ends further from the front lets the tuck flap rattle. */
  mostBehindFront: mm(6),
  tuck: mm(14),
  leastTuck: mm(8),
  /** Carton seams are glued over 10 to 15 mm. */
  tab: mm(12),
  leastDustFlap: mm(6),
  dustFlapShare: 0.45,
  betweenDustFlaps: mm(2),
  /** The tuck flaps of lid and bottom never meet. */
  betweenTucks: mm(5),
});

/** Everything that limits the dimensions. */
export const boundsOf = (spec: TuckBoxSpec, situation: Situation): Bound[] => [
  ...roomBounds(situation.rooms, {
    width: { terms: { [W]: 2, [D]: 2, [g]: 1 } },
    height: { terms: { [H]: 1, [l]: 2, [k]: 2 } },
  }),
  ...givenBounds(spec, dimensionNames),
  ...fitBounds(situation),
  ...formBounds(situation),
  ...seamBounds(spec, situation),
];

const seamBounds = (spec: TuckBoxSpec, { glueWidth, caliper }: Situation): Bound[] =>
  spec.join === 'slots'
    ? [
        atLeast(
          'least tab',
          'form',
          { [g]: 1 },
          leastLockedTab(lockedPaper(spec, caliper)),
          'slots lie 6 mm inside the edge of the back, and the tongues reach beyond them',
          '/join',
        ),
        atLeast(
          'height for a tongue',
          'form',
          { [H]: 1 },
          leastTonguedHeight(lockedPaper(spec, caliper)),
          'a lower box has no room for the tongue at its seam',
          '/join',
        ),
      ]
    : [
        atLeast(
          'least tab',
          'form',
          { [g]: 1 },
          leastTab(glueWidth),
          'the tab must hold its glue, clear of its edge and its score',
          '/glue/width',
        ),
      ];

function formBounds({ caliper }: Situation): Bound[] {
  return [
    atMost('tab within back', 'form', { [g]: 2, [W]: -1 }, 0, 'the tab takes half of the back at most'),
    atLeast(
      'least lid',
      'form',
      { [l]: 1 },
      practice.leastLid,
      'a box that flat has no room for its dust flaps',
    ),
    // a wall between two folds of 90° has its inside a caliper shorter than it is drawn (carton engineers' step)
    atMost(
      'lid within depth',
      'form',
      { [l]: 1, [D]: -1 },
      -caliper,
      'the tuck flap must lie behind the front, so the lid is shorter by the paper',
    ),
    atLeast(
      'lid to the front',
      'form',
      { [l]: 1, [D]: -1 },
      -practice.mostBehindFront - caliper,
      'the tuck flap must lie close behind the front',
    ),
    atLeast('least tuck flap', 'form', { [k]: 1 }, practice.leastTuck, 'a shorter tuck flap slips out'),
    atMost(
      'tuck flaps apart',
      'form',
      { [k]: 2, [H]: -1 },
      -practice.betweenTucks,
      'the tuck flaps of lid and bottom must not meet',
    ),
    atLeast(
      'least dust flap',
      'form',
      { [f]: 1 },
      practice.leastDustFlap,
      'a shorter dust flap keeps nothing out',
    ),
    atMost(
      'dust flaps apart',
      'form',
      { [f]: 2, [W]: -1 },
      -practice.betweenDustFlaps,
      'the dust flaps must not reach each other',
    ),
    atMost(
      'dust flap within lid',
      'form',
      { [f]: 1, [l]: -1, [k]: -1 },
      0,
      'a dust flap takes no more of the sheet than the lid beside it',
    ),
  ];
}

function fitBounds({ demand, caliper, spineEase, foldLoss }: Situation): Bound[] {
  if (!demand) return [];
  const item = demand.itemName;
  const deep = spineFor(demand.stack, { layers, caliper, ease: spineEase });
  return [
    atLeast(
      'box width',
      'fit',
      { [W]: 1 },
      demand.width + demand.easeAcross + caliper + 2 * foldLoss,
      `the ${item} needs play between the sides`,
      '/contents',
    ),
    atLeast(
      'box height',
      'fit',
      { [H]: 1 },
      // dust flaps lie a caliper within lid and bottom
      demand.height + demand.easeAlong + 3 * caliper + 2 * foldLoss,
      `the ${item} needs play between the dust flaps`,
      '/contents',
    ),
    atLeast(
      'lid for the stack',
      'fit',
      { [l]: 1 },
      deep,
      'the stack lies behind the tuck flaps',
      '/contents',
    ),
    atLeast(
      'depth for the stack',
      'fit',
      { [D]: 1 },
      deep + caliper,
      'the sides must hold the stack, the tuck flap and the front',
      '/contents',
    ),
  ];
}

/** What the solver looks for, in order, and what each would best be. */
export function unknownsOf({ join }: TuckBoxSpec, situation: Situation): Unknown[] {
  const { demand, caliper } = situation;
  const room = roomOf(situation);
  const taken = 'that is what the contents take';
  const largest = 'that uses the sheet';
  return [
    demand ? leastOf(D, taken) : about(D, practice.depth, 'makers like 25 mm'),
    about(l, (known) => at(known, D) - caliper, 'the tuck flap lies close behind the front', 'down'),
    join === 'slots'
      ? leastOf(g, 'a deeper tab would only take paper')
      : about(g, practice.tab, 'carton seams are glued over 10 to 15 mm'),
    about(k, practice.tuck, 'makers like 14 mm'),
    demand
      ? leastOf(W, taken)
      : about(W, (known) => (room.width - at(known, g)) / 2 - at(known, D), largest, 'down'),
    demand
      ? leastOf(H, taken)
      : about(H, (known) => room.height - 2 * at(known, l) - 2 * at(known, k), largest, 'down'),
    about(
      f,
      (known) => Math.min(practice.dustFlapShare * at(known, W), at(known, l) + at(known, k)),
      'dust flaps reach nearly to the middle',
      'down',
    ),
  ];
}
