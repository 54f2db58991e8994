import type { FoldProgram } from '../../creases/fold-program.ts';
import { inch, mm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { panelOf, programOn } from '../common/blank.ts';
import { at } from '../common/dimension.ts';
import { about } from '../common/wishes.ts';
import type { Dimensions, Situation } from '../style.ts';
import { withSpec } from '../with-spec.ts';
import { type TagSpec, tagSpec } from './spec.ts';

/*
 * A single piece that nobody folds, its two upper corners cut off. The hole for the ribbon is a knockout, and the maker's
 * own to place.
 */

const W = 'panel.width';
const H = 'panel.height';
const c = 'corner';

const dimensionNames = [
  { name: W, title: 'width' },
  { name: H, title: 'height' },
  { name: c, title: 'corner' },
] as const;

/** Common practice, no published source. */
const practice = Object.freeze({
  width: inch(2),
  height: inch(3.5),
  cornerShare: 0.28,
  /** So much stays of the upper edge, for the hole. */
  upperEdge: mm(10),
  least: mm(20),
});

const boundsOf = (spec: TagSpec, { rooms }: Situation): Bound[] => [
  ...roomBounds(rooms, { width: { terms: { [W]: 1 } }, height: { terms: { [H]: 1 } } }),
  ...givenBounds(spec, dimensionNames),
  atLeast('least width', 'form', { [W]: 1 }, practice.least, 'a narrower tag has no room for its hole'),
  atLeast('least height', 'form', { [H]: 1 }, practice.least, 'a lower tag has no room for its hole'),
  atLeast('least corner', 'form', { [c]: 1 }, mm(1), 'a smaller corner cannot be cut'),
  atMost(
    'corners apart',
    'form',
    { [c]: 2, [W]: -1 },
    -practice.upperEdge,
    'the upper edge needs 10 mm for the hole',
  ),
  atMost(
    'corner within height',
    'form',
    { [c]: 1, [H]: -1 },
    -mm(5),
    'the corners must not reach the lower edge',
  ),
];

const unknowns: readonly Unknown[] = [
  about(W, practice.width, 'makers like 2 in'),
  about(H, practice.height, 'makers like 3 1/2 in'),
  about(c, (known) => practice.cornerShare * at(known, W), 'the corners take that share of the width'),
];

function program(d: Dimensions): FoldProgram {
  const [width, height, corner] = [at(d, W), at(d, H), at(d, c)];
  const outline = [
    [corner, 0],
    [width - corner, 0],
    [width, corner],
    [width, height],
    [0, height],
    [0, corner],
  ] as const;
  return programOn([panelOf('tag', outline)], []);
}

const size = (d: Dimensions) => ({ width: at(d, W), height: at(d, H) });

/** A tag to tie on. */
export const tag = withSpec(tagSpec, {
  name: 'tag',
  title: 'Tag',
  summary: 'A single piece with its two upper corners cut off, to be tied on through a hole.',
  words: {
    piece: 'tag',
    flat: 'tag',
    ready: 'finished',
    ajar: { heading: 'lying on the table', description: 'The tag lies on the table, its inside face up' },
    sizedBy: 'its width and height',
  },
  dimensionNames,
  pockets: [],
  seams: [],
  face: 'tag',
  covers: [
    { name: 'outside face', side: 'outside' },
    { name: 'inside face', side: 'inside' },
  ],
  pose: { spun: 24, turned: 0, tipped: -50 },
  layers: 1,
  cornersAt: '/dimensions/corner',
  // without a word about its size it has the usual one
  saysHowLarge: () => true,
  model: (spec, situation) => ({ unknowns, bounds: boundsOf(spec, situation) }),
  dimensions: (values) => values,
  blank: size,
  closed: size,
  flat: size,
  oddness: (d) => Math.abs(at(d, c) / at(d, W) - practice.cornerShare),
  program: (_, d) => program(d),
});
