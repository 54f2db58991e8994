import { mm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { leastTab } from '../common/bottom-pocket.ts';
import { at } from '../common/dimension.ts';
import { around, forContents, upTo } from '../common/fit-bounds.ts';
import { about, leastOf, roomOf } from '../common/wishes.ts';
import type { Situation } from '../style.ts';
import { b, dimensionNames, H, r, W } from './dimensions.ts';
import type { SlipSleeveSpec } from './spec.ts';

/** Layers of the sheet around the contents. */
export const layers = 2;

/** Common practice, no published source. */
const practice = Object.freeze({
  tab: mm(15),
  /** Thumb notches have a radius of 10 to 13 mm and stay 6 mm from scores. */
  notch: mm(12),
  leastNotch: mm(6),
  besideNotch: mm(6),
  /** What stays between the two tabs and the far ends of what they hold. */
  betweenTabs: mm(20),
});

/** Everything that limits the dimensions. */
export const boundsOf = (spec: SlipSleeveSpec, situation: Situation): Bound[] => [
  ...roomBounds(situation.rooms, {
    width: { terms: { [W]: 2, [b]: 1 } },
    height: { terms: { [H]: 1, [b]: 1 } },
  }),
  ...givenBounds(spec, dimensionNames),
  ...fitBounds(situation),
  ...formBounds(spec, situation),
];

function formBounds({ mouth }: SlipSleeveSpec, { glueWidth }: Situation): Bound[] {
  const within = 'a tab leaves 20 mm for its own ends, which are cut off askew';
  return [
    atLeast(
      'least tab',
      'form',
      { [b]: 1 },
      leastTab(glueWidth),
      'a tab must hold its glue, clear of its edge and its score',
      '/glue/width',
    ),
    atMost('bottom tab within width', 'form', { [b]: 2, [W]: -1 }, -practice.betweenTabs, within),
    atMost('side tab within height', 'form', { [b]: 2, [H]: -1 }, -practice.betweenTabs, within),
    ...(mouth === 'straight'
      ? [
          atLeast('no notch', 'form', { [r]: 1 }, 0, 'a straight mouth has no notch'),
          atMost('no notch', 'form', { [r]: 1 }, 0, 'a straight mouth has no notch'),
        ]
      : [
          atLeast('least notch', 'form', { [r]: 1 }, practice.leastNotch, 'no thumb fits a smaller notch'),
          atMost(
            'notch beside scores',
            'form',
            { [r]: 2, [W]: -1 },
            -2 * practice.besideNotch,
            'the notch stays 6 mm from the sides',
          ),
          atMost(
            'notch within height',
            'form',
            { [r]: 3, [H]: -1 },
            0,
            'the notch takes a third of the height at most',
          ),
        ]),
  ];
}

function fitBounds({ demand, foldLoss }: Situation): Bound[] {
  if (!demand) return [];
  const item = demand.itemName;
  return [
    forContents(
      'sleeve width',
      W,
      around(demand.width, demand, foldLoss),
      `the sleeve must go round the ${item} and its stack`,
    ),
    forContents(
      'sleeve height',
      H,
      upTo(demand.height, demand, foldLoss),
      `the ${item} needs play between the bottom and the mouth`,
    ),
  ];
}

/** What the solver looks for, in order, and what each would best be. */
export function unknownsOf(spec: SlipSleeveSpec, situation: Situation): Unknown[] {
  const { demand, prefer } = situation;
  const room = roomOf(situation);
  const taken = 'that is what the contents take';
  const largest = 'that uses the sheet';
  return [
    prefer === 'least-paper'
      ? leastOf(b, 'a deeper tab would only take paper')
      : about(b, practice.tab, 'makers like 15 mm'),
    demand ? leastOf(W, taken) : about(W, (known) => (room.width - at(known, b)) / 2, largest, 'down'),
    demand ? leastOf(H, taken) : about(H, (known) => room.height - at(known, b), largest, 'down'),
    spec.mouth === 'straight'
      ? leastOf(r, 'a straight mouth has no notch')
      : about(r, practice.notch, 'that takes a thumb'),
  ];
}
