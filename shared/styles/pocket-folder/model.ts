import { spineFor } from '../../contents/stack.ts';
import { lockPractice } from '../../creases/lock.ts';
import { inch, mm, type Nm } from '../../lengths/nanometres.ts';
import { atLeast, atMost, type Bound, type Unknown } from '../../solver/bounds.ts';
import { givenBounds } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { gluedEnd, pocketPractice } from '../common/bottom-pocket.ts';
import { at } from '../common/dimension.ts';
import { around, forContents, pocketHolds, upTo } from '../common/fit-bounds.ts';
import { pocketBounds } from '../common/pocket-bounds.ts';
import { commonPractice, scoresApart } from '../common/practice.ts';
import { about, leastOf, roomOf } from '../common/wishes.ts';
import type { Dimensions, Situation } from '../style.ts';
import { b, dimensionNames, H, p, S, W } from './dimensions.ts';
import type { PocketFolderSpec } from './spec.ts';

/** Layers of the sheet between the two outer faces of the closed folder: a cover and a pocket, twice. */
export const layers = 4;

/** Common practice, no published source, unless a line says otherwise. */
const practice = Object.freeze({
  spine: inch(1 / 4),
  /** Glue tabs of printed folders are 3/4 in deep, as their printers say. */
  tab: inch(3 / 4),
  /** A pocket takes half of a small cover, and 36 % of a large one: 4 in for 11 in, as folder printers say. */
  pocketShare: 0.5,
  largePocketShare: 0.36,
  large: mm(250),
  /** Lower, and the contents tip out. */
  leastPocketShare: 0.3,
  /** The pocket's mouth stays this far below the cover's top. */
  belowTop: mm(10),
  /** The tips of the two tabs below the spine stay as far from its middle. */
  besideTabs: mm(1),
});

const shareFor = (height: number): number =>
  height < practice.large ? practice.pocketShare : practice.largePocketShare;

/** Everything that limits the dimensions. */
export const boundsOf = (spec: PocketFolderSpec, situation: Situation): Bound[] => [
  ...roomBounds(situation.rooms, {
    width: { terms: { [W]: 2, [S]: 1, [b]: 2 } },
    height: { terms: { [H]: 1, [p]: 1 } },
  }),
  ...givenBounds(spec, dimensionNames),
  ...fitBounds(spec, situation),
  ...formBounds(situation),
  ...pocketBounds(spec, { tab: b, pocket: p }, situation),
  ...(spec.join === 'slots' ? lockedForm(spec) : gluedForm(situation)),
];

const gluedForm = ({ glueWidth }: Situation): Bound[] => [
  atMost(
    'tab within pocket',
    'form',
    { [b]: 1, [W]: -1 },
    -gluedEnd(glueWidth) - commonPractice.edgeToScore,
    'a tab must not reach the glue at the pocket’s other end',
  ),
];

/** How far the tips of tabs stay from the spine's middle: the tool must not take all that is between them. */
const besideTabs = ({ cutter }: PocketFolderSpec): Nm =>
  Math.max(practice.besideTabs, Math.ceil(((cutter?.kerf ?? 0) + lockPractice.betweenCuts) / 2));

/** How far a locked pocket ends from the spine: its tab lies below half of the spine, clear of the other pocket's. */
export const spineInset = (spec: PocketFolderSpec, tab: Nm, spine: Nm): Nm =>
  Math.max(pocketPractice.notch, tab - Math.floor(spine / 2) + besideTabs(spec));

/**
 * What is left of a panel's width beside a locked pocket's inset at the spine is a length at least. The inset is the larger
 * of two, and so there are two bounds.
 */
const besideInset = (
  spec: PocketFolderSpec,
  kind: Bound['kind'],
  name: string,
  tabs: number,
  length: Nm,
  why: string,
  path: string,
) => [
  atLeast(name, kind, { [W]: 1, [b]: -tabs }, length + pocketPractice.notch, why, path),
  atLeast(
    `${name} beside the spine`,
    kind,
    { [W]: 2, [b]: -2 - 2 * tabs, [S]: 1 },
    2 * (length + besideTabs(spec)) + 1,
    `${why}, and the tab at the spine lies below half of it`,
    path,
  ),
];

const lockedForm = (spec: PocketFolderSpec): readonly Bound[] =>
  besideInset(
    spec,
    'form',
    'tabs within pocket',
    2,
    commonPractice.edgeToScore,
    'the tongues of a pocket’s two tabs must not reach each other',
    '/join',
  );

function formBounds({ caliper }: Situation): Bound[] {
  const empty = spineFor(0, { layers, caliper, ease: 0 });
  return [
    atMost(
      'pocket within panel',
      'form',
      { [p]: 1, [H]: -1 },
      -practice.belowTop,
      'a pocket’s mouth lies at least 10 mm below the top',
    ),
    atLeast(
      'spine scores apart',
      'form',
      { [S]: 1 },
      scoresApart(caliper),
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

function fitBounds(
  spec: PocketFolderSpec,
  { demand, caliper, spineEase, foldLoss, glueWidth }: Situation,
): Bound[] {
  if (!demand) return [];
  const item = demand.itemName;
  const inside = around(demand.width, demand, foldLoss);
  const goesRound = `the pocket must go round the ${item} and its stack`;
  return [
    ...(spec.join === 'slots'
      ? besideInset(spec, 'fit', 'pocket width', 0, inside, goesRound, '/contents')
      : [forContents('pocket width', W, inside + gluedEnd(glueWidth), `${goesRound}, beside its glue`)]),
    forContents(
      'panel height',
      H,
      upTo(demand.height, demand, foldLoss),
      `the ${item} must not stand out above the cover`,
    ),
    pocketHolds(p, demand, practice.leastPocketShare),
    forContents(
      'spine for the stack',
      S,
      spineFor(demand.stack, { layers, caliper, ease: spineEase }),
      'the spine must hold both stacks and the folder’s own layers',
    ),
  ];
}

/** What the solver looks for, in order, and what each would best be. */
export function unknownsOf({ join }: PocketFolderSpec, situation: Situation): Unknown[] {
  const { demand, prefer } = situation;
  const room = roomOf(situation);
  const taken = 'that is what the contents take';
  const largest = (name: string, value: Parameters<typeof about>[1]) =>
    about(name, value, 'that uses the sheet', 'down');
  return [
    demand ? leastOf(S, taken) : about(S, practice.spine, 'makers like 1/4 in'),
    prefer === 'least-paper' || join === 'slots'
      ? leastOf(b, 'a deeper tab would only take paper')
      : about(b, practice.tab, 'printed folders have tabs of 3/4 in'),
    demand ? leastOf(W, taken) : largest(W, (known) => (room.width - at(known, S) - 2 * at(known, b)) / 2),
    demand ? leastOf(H, taken) : largest(H, () => room.height / (1 + shareFor(room.height / 1.5))),
    about(p, (known) => shareFor(at(known, H)) * at(known, H), 'that share of the cover holds well'),
  ];
}

/** How far the pockets are from their usual share of the cover. */
export const oddness = (d: Dimensions): number => Math.abs(at(d, p) / at(d, H) - shareFor(at(d, H)));
