import { spineFor } from '../../contents/stack.ts';
import { atLeast, atMost, type Bound } from '../../solver/bounds.ts';
import { givenBounds } from '../../solver/given.ts';
import { roomBounds } from '../../solver/room-bounds.ts';
import { around, forContents } from '../common/fit-bounds.ts';
import { gluedDepth, scoresApart } from '../common/practice.ts';
import type { Situation } from '../style.ts';
import { b, dimensionNames, H, h, o, S, t, W } from './dimensions.ts';
import { practice } from './practice.ts';
import type { TwinSleeveSpec } from './spec.ts';

/** Layers of the sheet between the two outer faces of the closed folder, beside the spine: three each side. */
export const layers = 6;

/** Everything that limits the dimensions. */
export const boundsOf = (spec: TwinSleeveSpec, situation: Situation): Bound[] => [
  ...roomBounds(situation.rooms, {
    width: { terms: { [W]: 2, [S]: 1, [h]: 2 } },
    height: { terms: { [H]: 2, [o]: 1 } },
  }),
  ...givenBounds(spec, dimensionNames, { [b]: { [H]: 1, [o]: 1, [t]: -1 } }),
  ...fitBounds(situation),
  ...formBounds(situation),
];

function formBounds({ glueWidth, caliper }: Situation): Bound[] {
  const tab = gluedDepth(glueWidth);
  const apart = scoresApart(caliper);
  const empty = spineFor(0, { layers: layers, caliper, ease: 0 });
  const clear = practice.edgeToScore;
  return [
    atLeast(
      'least hem',
      'form',
      { [h]: 1 },
      tab,
      'a hem must hold its glue with 1.5 mm to spare on each side',
      '/glue/width',
    ),
    atLeast(
      'least overlap',
      'form',
      { [o]: 1 },
      tab,
      'the seam must hold its glue with 1.5 mm to spare on each side',
      '/glue/width',
    ),
    atMost(
      'hem within panel',
      'form',
      { [h]: 1, [W]: -1 },
      -clear,
      'a hem ends 3 mm short of the spine score',
    ),
    atMost(
      'hem within top flap',
      'form',
      { [h]: 1, [t]: -1 },
      0,
      'a corner must not reach the top flap’s score',
    ),
    atMost(
      'hem within bottom flap',
      'form',
      { [h]: 1, [t]: 1, [H]: -1, [o]: -1 },
      0,
      'a corner must not reach the bottom flap’s score',
    ),
    atMost(
      'top flap within panel',
      'form',
      { [t]: 1, [H]: -1 },
      -clear,
      'the top flap ends 3 mm short of the bottom fold',
    ),
    atMost(
      'bottom flap within panel',
      'form',
      { [o]: 1, [t]: -1 },
      0,
      'the bottom flap ends at the top fold at the latest',
    ),
    atLeast(
      'spine scores apart',
      'form',
      { [S]: 1 },
      apart,
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

function fitBounds(situation: Situation): Bound[] {
  const { demand, caliper, spineEase, foldLoss } = situation;
  if (!demand) return [];
  // a panel has a fold at both of its ends
  const across = demand.width + demand.easeAcross + 2 * foldLoss;
  const along = around(demand.height, demand, foldLoss);
  const spine = spineFor(demand.stack, { layers: layers, caliper, ease: spineEase });
  const item = demand.itemName;
  return [
    forContents('pocket width', W, across, `the ${item} needs play between the spine and the pocket’s mouth`),
    forContents('pocket height', H, along, `the pocket must go round the ${item} and its stack`),
    forContents(
      'spine for the stack',
      S,
      spine,
      'the spine must hold both stacks and the folder’s own layers',
    ),
  ];
}
