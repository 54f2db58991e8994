import { spineFor } from '../../contents/stack.ts';
import { inch, mm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { at } from '../common/dimension.ts';
import { around, forContents, pocketHolds, upTo } from '../common/fit-bounds.ts';
import { pocketBounds } from '../common/pocket-bounds.ts';
import { commonPractice, scoresApart } from '../common/practice.ts';
import { about, leastOf, roomOf } from '../common/wishes.ts';
import type { Dimensions, Situation } from '../style.ts';
import { b, D, D2, dimensionNames, H, p, S, S2, W } from './dimensions.ts';
import type { GateWalletSpec } from './spec.ts';

/** Layers of the sheet beside the hinge: the middle, a tab, the pocket, and the door. */
export const layers = 4;

/** Common practice, no published source, unless a line says otherwise. */
const practice = Object.freeze({
  hinge: inch(1 / 4),
  tab: mm(15),
  pocketShare: 0.5,
  leastPocketShare: 0.3,
  belowTop: mm(10),
  /** Doors that meet are kept 3 to 15 mm apart, as printers of gate folds say. */
  gap: mm(3),
  leastGap: mm(1),
  mostGap: mm(15),
  overlap: mm(25),
  leastOverlap: mm(10),
});

export const isOverlapping = ({ doors }: GateWalletSpec): boolean => doors === 'overlapping';

/** Everything that limits the dimensions. */
export const boundsOf = (spec: GateWalletSpec, situation: Situation): Bound[] => [
  ...roomBounds(situation.rooms, {
    width: { terms: { [W]: 1, [S]: 1, [S2]: 1, [D]: 1, [D2]: 1 } },
    height: { terms: { [H]: 1, [p]: 1 } },
  }),
  ...givenBounds(spec, dimensionNames),
  ...fitBounds(situation),
  ...formBounds(spec, situation),
];

function formBounds(spec: GateWalletSpec, { glueWidth, caliper }: Situation): Bound[] {
  const clear = commonPractice.edgeToScore;
  return [
    ...doorBounds(spec, caliper),
    ...pocketBounds(spec, { tab: b, pocket: p }, { glueWidth, caliper }),
    ...([D, D2] as const).map((door) =>
      atMost(
        `${door === D ? 'left' : 'right'} door within panel`,
        'form',
        { [door]: 1, [W]: -1 },
        -clear,
        'a door ends 3 mm short of the other hinge',
      ),
    ),
    ...(
      [
        [D, S],
        [D2, S2],
      ] as const
    ).map(([door, hinge]) =>
      atMost(
        `tab beside ${door === D ? 'left' : 'right'} door`,
        'form',
        { [b]: 1, [door]: -1, [hinge]: -1 },
        0,
        'a tab takes no more width than the hinge and the door above it',
      ),
    ),
    atMost('tabs within pocket', 'form', { [b]: 2, [W]: -1 }, -clear, 'the tabs must not reach each other'),
    atMost(
      'pocket within panel',
      'form',
      { [p]: 1, [H]: -1 },
      -practice.belowTop,
      'the pocket’s mouth lies at least 10 mm below the top',
    ),
    atLeast(
      'hinge scores apart',
      'form',
      { [S]: 1 },
      scoresApart(caliper),
      'two scores closer than that are hard to make in this paper',
    ),
    atLeast(
      'hinge of the empty wallet',
      'form',
      { [S]: 1 },
      spineFor(0, { layers, caliper, ease: 0 }),
      'the hinge must hold the wallet’s own layers',
    ),
  ];
}

function doorBounds(spec: GateWalletSpec, caliper: number): Bound[] {
  if (isOverlapping(spec))
    return [
      atMost(
        'doors overlap',
        'form',
        { [W]: 1, [D]: -1, [D2]: -1 },
        -practice.leastOverlap,
        'the doors lie over each other by 10 mm at least',
      ),
      atLeast(
        'hinge around the left door',
        'form',
        { [S2]: 1, [S]: -1 },
        caliper,
        'the right door lies over the left one, so its hinge is deeper by the paper',
      ),
    ];
  return [
    atMost(
      'doors apart',
      'form',
      { [D]: 1, [D2]: 1, [W]: -1 },
      -practice.leastGap,
      'doors that meet need 1 mm between them',
    ),
    atMost(
      'doors meet',
      'form',
      { [W]: 1, [D]: -1, [D2]: -1 },
      practice.mostGap,
      'doors that meet are 15 mm apart at most',
    ),
    atMost('hinges alike', 'form', { [S2]: 1, [S]: -1 }, 0, 'doors that meet lie in one plane'),
    atLeast('hinges alike', 'form', { [S2]: 1, [S]: -1 }, 0, 'doors that meet lie in one plane'),
  ];
}

function fitBounds({ demand, caliper, spineEase, foldLoss }: Situation): Bound[] {
  if (!demand) return [];
  const item = demand.itemName;
  return [
    forContents(
      'pocket width',
      W,
      around(demand.width, demand, foldLoss),
      `the pocket must go round the ${item} and its stack`,
    ),
    forContents(
      'panel height',
      H,
      upTo(demand.height, demand, foldLoss),
      `the ${item} must not stand out above the wallet`,
    ),
    pocketHolds(p, demand, practice.leastPocketShare),
    forContents(
      'hinge for the stack',
      S,
      spineFor(demand.stack, { layers, caliper, ease: spineEase }),
      'the hinges must hold the stack and the wallet’s own layers',
    ),
  ];
}

/** What the solver looks for, in order, and what each would best be. */
export function unknownsOf(spec: GateWalletSpec, situation: Situation): Unknown[] {
  const { demand, prefer } = situation;
  const room = roomOf(situation);
  const overlapping = isOverlapping(spec);
  const taken = 'that is what the contents take';
  const largest = 'that uses the sheet';
  const more = overlapping ? practice.overlap : -practice.gap;
  return [
    demand ? leastOf(S, taken) : about(S, practice.hinge, 'makers like 1/4 in'),
    leastOf(S2, overlapping ? 'that is what lies under the right door' : 'doors that meet lie in one plane'),
    demand
      ? leastOf(W, taken)
      : about(W, (known) => (room.width - at(known, S) - at(known, S2) - more) / 2, largest, 'down'),
    demand ? leastOf(H, taken) : about(H, room.height / (1 + practice.pocketShare), largest, 'down'),
    about(
      D,
      (known) => (at(known, W) + more) / 2,
      overlapping ? 'the doors lie over each other in the middle' : 'the doors meet in the middle',
    ),
    about(D2, (known) => at(known, W) + more - at(known, D), 'both doors together cover the middle'),
    about(p, (known) => practice.pocketShare * at(known, H), 'that share of the height holds well'),
    prefer === 'least-paper' || spec.join === 'slots'
      ? leastOf(b, 'a deeper tab would only take paper')
      : about(b, practice.tab, 'makers like 15 mm'),
  ];
}

/** How far the pocket is from its usual share. */
export const oddness = (d: Dimensions): number => Math.abs(at(d, p) / at(d, H) - practice.pocketShare);
