import type { FoldProgram } from '../../creases/fold-program.ts';
import { inch, mm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds, givenIn } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { panelOfPieces, programOn, rectangle } from '../common/blank.ts';
import { cardBounds } from '../common/card-size.ts';
import { at } from '../common/dimension.ts';
import { about, roomOf } from '../common/wishes.ts';
import type { Dimensions, Situation } from '../style.ts';
import { withSpec } from '../with-spec.ts';
import { type InsertSpec, insertSpec } from './spec.ts';

/* A single piece as large as the cards that it parts, with a tab that stands out above them. */

const W = 'panel.width';
const H = 'panel.height';
const tw = 'tab.width';
const th = 'tab.height';

const dimensionNames = [
  { name: W, title: 'width' },
  { name: H, title: 'height' },
  { name: tw, title: 'tab width' },
  { name: th, title: 'tab height' },
] as const;

/** Common practice, no published source. */
const practice = Object.freeze({
  tabHeight: inch(3 / 8),
  leastTab: mm(10),
  leastTabHeight: mm(5),
  taper: mm(2),
  least: mm(30),
});

const usualTab = { place: 1, of: 3 };

const boundsOf = (spec: InsertSpec, { rooms }: Situation): Bound[] => [
  ...roomBounds(rooms, { width: { terms: { [W]: 1 } }, height: { terms: { [H]: 1, [th]: 1 } } }),
  ...givenBounds(spec, dimensionNames),
  ...cardBounds(spec, W, H),
  atLeast('least width', 'form', { [W]: 1 }, practice.least, 'a narrower divider parts nothing'),
  atLeast('least height', 'form', { [H]: 1 }, practice.least, 'a lower divider parts nothing'),
  atLeast('least tab', 'form', { [tw]: 1 }, practice.leastTab, 'nobody can write on a narrower tab'),
  atLeast('least tab height', 'form', { [th]: 1 }, practice.leastTabHeight, 'nobody can hold a lower tab'),
  atMost('tab within width', 'form', { [tw]: 1, [W]: -1 }, 0, 'the tab is no wider than the divider'),
];

function unknownsOf({ tab = usualTab }: InsertSpec, situation: Situation): Unknown[] {
  const room = roomOf(situation);
  return [
    about(W, room.width, 'that uses the sheet', 'down'),
    about(th, practice.tabHeight, 'makers like 3/8 in'),
    about(H, (known) => room.height - at(known, th), 'that uses the sheet', 'down'),
    about(tw, (known) => at(known, W) / tab.of, 'every tab has its share of the width', 'down'),
  ];
}

function program({ tab = usualTab }: InsertSpec, d: Dimensions): FoldProgram {
  const [width, height, across, up] = [at(d, W), at(d, H), at(d, tw), at(d, th)];
  const step = tab.of === 1 ? 0 : (tab.place - 1) / (tab.of - 1);
  const left = Math.round(step * (width - across));
  return programOn(
    [
      panelOfPieces('divider', [
        [
          [left, up],
          [left + practice.taper, 0],
          [left + across - practice.taper, 0],
          [left + across, up],
        ],
        rectangle(0, up, width, up + height),
      ]),
    ],
    [],
  );
}

const size = (d: Dimensions) => ({ width: at(d, W), height: at(d, H) + at(d, th) });

/** A divider that stands between the cards of a set. */
export const insert = withSpec(insertSpec, {
  name: 'insert',
  title: 'Divider',
  summary: 'A single piece as large as the cards that it parts, with a tab that stands out above them.',
  words: {
    piece: 'divider',
    flat: 'divider',
    ready: 'finished',
    ajar: { heading: 'lying on the table', description: 'The divider lies on the table, its inside face up' },
    sizedBy: 'its width and height, or give a card',
  },
  dimensionNames,
  pockets: [],
  seams: [],
  face: 'divider',
  covers: [
    { name: 'outside face', side: 'outside' },
    { name: 'inside face', side: 'inside' },
  ],
  pose: { spun: 24, turned: 0, tipped: -50 },
  layers: 1,
  saysHowLarge: (spec) =>
    spec.card !== undefined || (givenIn(spec, W) !== undefined && givenIn(spec, H) !== undefined),
  model: (spec, situation) => ({ unknowns: unknownsOf(spec, situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => values,
  blank: size,
  closed: size,
  flat: size,
  oddness: () => 0,
  program,
});
