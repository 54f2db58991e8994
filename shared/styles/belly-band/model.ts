import { spineFor } from '../../contents/stack.ts';
import { mm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds, givenIn } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { at } from '../common/dimension.ts';
import { leastLockedTab, leastTongued, lockedPaper } from '../common/lock.ts';
import { gluedDepth, scoresApart } from '../common/practice.ts';
import { about, leastOf, roomOf } from '../common/wishes.ts';
import type { Situation } from '../style.ts';
import { D, dimensionNames, H, o, W } from './dimensions.ts';
import type { BellyBandSpec } from './spec.ts';

/** Layers of the sheet around the contents: the front, and at the back both ends. */
export const layers = 3;

/** Common practice, no published source, unless a line says otherwise. */
const practice = Object.freeze({
  side: mm(6),
  /** Ends lie over each other by 20 to 25 mm; one publisher of printed bands says 1 in. */
  overlap: mm(22),
  heightShare: 1 / 3,
  leastHeight: mm(15),
  height: mm(40),
});

/** The tongues of a band stay this far within its edges, so that their slots keep their web. */
export const besideTongue = mm(3);

/** Whether the sides have one fold: two scores nearer to each other than that are hard to make. */
export const isThin = (spec: BellyBandSpec, { demand, caliper }: Situation): boolean =>
  demand !== undefined &&
  givenIn(spec, D) === undefined &&
  spineFor(demand.stack, { layers, caliper, ease: 0 }) < scoresApart(caliper);

/** Everything that limits the dimensions. */
export const boundsOf = (spec: BellyBandSpec, situation: Situation): Bound[] => [
  ...roomBounds(situation.rooms, {
    width: { terms: { [W]: 2, [D]: 2, [o]: 1 } },
    height: { terms: { [H]: 1 } },
  }),
  ...givenBounds(spec, dimensionNames),
  ...fitBounds(spec, situation),
  ...formBounds(spec, situation),
];

function formBounds(spec: BellyBandSpec, situation: Situation): Bound[] {
  const { caliper } = situation;
  return [
    ...(isThin(spec, situation)
      ? [
          atLeast('side with one fold', 'form', { [D]: 1 }, 0, 'one fold goes round a stack that thin'),
          atMost('side with one fold', 'form', { [D]: 1 }, 0, 'one fold goes round a stack that thin'),
        ]
      : [
          atLeast(
            'side scores apart',
            'form',
            { [D]: 1 },
            scoresApart(caliper),
            'two scores closer than that are hard to make in this paper',
          ),
        ]),
    ...endBounds(spec, situation),
    atMost(
      'overlap within back',
      'form',
      { [o]: 1, [W]: -1 },
      -2 * practice.leastHeight,
      'the ends meet on the back',
    ),
    atLeast('least height', 'form', { [H]: 1 }, practice.leastHeight, 'a narrower band tears'),
  ];
}

/** What the ends must have room for where they lie over each other. */
const endBounds = (spec: BellyBandSpec, { glueWidth, caliper }: Situation): Bound[] =>
  spec.join === 'slots'
    ? [
        atLeast(
          'least overlap',
          'form',
          { [o]: 1 },
          leastLockedTab(lockedPaper(spec, caliper)),
          'a slot lies 6 mm inside the edge of its end, and the tongue reaches beyond it',
          '/join',
        ),
        atLeast(
          'height for a tongue',
          'form',
          { [H]: 1 },
          leastTongued(lockedPaper(spec, caliper)) + 2 * besideTongue,
          'a narrower band has no room for a tongue',
          '/join',
        ),
      ]
    : [
        atLeast(
          'least overlap',
          'form',
          { [o]: 1 },
          gluedDepth(glueWidth),
          'the ends must hold their glue with 1.5 mm to spare on each side',
          '/glue/width',
        ),
      ];

/**
 * The loop around the contents: twice their width and thickness, what four bends of 90° take of the paper's middle (π
 * calipers in all), and the play.
 */
function fitBounds(spec: BellyBandSpec, situation: Situation): Bound[] {
  const { demand, caliper, spineEase } = situation;
  if (!demand) return [];
  const item = demand.itemName;
  const loop = Math.round((Math.PI * caliper + demand.easeAcross) / 2);
  const width = isThin(spec, situation)
    ? demand.width + demand.stack + loop
    : // what the sides take for their layers the front need not take again
      demand.width + Math.max(caliper, loop - (layers - 1) * caliper);
  return [
    atLeast(
      'band around the width',
      'fit',
      { [W]: 1 },
      width,
      `the band must go round the ${item}`,
      '/contents',
    ),
    atMost(
      'band within the height',
      'fit',
      { [H]: 1 },
      demand.height,
      `the band is no higher than the ${item}`,
      '/contents',
    ),
    ...(isThin(spec, situation)
      ? []
      : [
          atLeast(
            'side for the stack',
            'fit',
            { [D]: 1 },
            spineFor(demand.stack, { layers, caliper, ease: spineEase }),
            'the sides must be as deep as the stack',
            '/contents',
          ),
        ]),
  ];
}

/** What the solver looks for, in order, and what each would best be. */
export function unknownsOf(situation: Situation): Unknown[] {
  const { demand } = situation;
  const room = roomOf(situation);
  const taken = 'that is what the contents take';
  return [
    demand ? leastOf(D, taken) : about(D, practice.side, 'makers like 6 mm'),
    about(o, practice.overlap, 'ends lie over each other by 20 to 25 mm'),
    demand
      ? leastOf(W, taken)
      : about(W, (known) => (room.width - at(known, o)) / 2 - at(known, D), 'that uses the sheet', 'down'),
    about(
      H,
      demand ? practice.heightShare * demand.height : practice.height,
      demand ? 'a third of the height holds well' : 'makers like 40 mm',
    ),
  ];
}
