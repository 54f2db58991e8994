import type { Unknown } from '../../solver/bounds.ts';
import type { Situation } from '../style.ts';
import { at, H, h, o, S, t, W } from './dimensions.ts';
import { practice } from './practice.ts';

/** What the solver looks for, in order, and what each would best be. */
export function unknownsOf(situation: Situation): Unknown[] {
  const { grid, gridGiven } = situation;
  const fill = situation.prefer === 'whole-sheet';
  const roomWidth = Math.min(...situation.rooms.map((room) => room.width));
  const roomHeight = Math.min(...situation.rooms.map((room) => room.height));
  const hasDemand = situation.demand !== undefined;
  return [
    {
      name: S,
      wish: ({ least }) => {
        if (!hasDemand) return { value: practice.spine, snap: 'nearest', why: 'makers like 1/2 in' };
        const snapped = grid > 0 ? Math.ceil(least / grid) * grid : least;
        // two equal hems share what is left of the width: an odd step would leave a sliver to trim
        const odd = fill && grid > 0 && (roomWidth - snapped) % (2 * grid) === grid;
        return odd
          ? {
              value: snapped + grid,
              snap: 'nearest',
              why: 'that is what the stack takes, and a step more so that the hems use up the sheet’s width',
            }
          : { value: least, snap: 'up', why: 'that is what the stack takes' };
      },
    },
    {
      name: W,
      wish: ({ least }, known) =>
        hasDemand
          ? { value: least, snap: 'up', why: 'that is what the pocket takes' }
          : {
              value: (roomWidth - at(known, S)) / (2 + 2 * practice.hemShare),
              snap: 'nearest',
              why: 'panels and hems share the sheet’s width in the style’s proportions',
            },
    },
    {
      name: H,
      wish: ({ least }) => {
        const whole = (roomHeight - practice.overlap) / 2;
        if (!hasDemand) return { value: whole, snap: 'down', why: 'that uses the sheet’s height' };
        return fill
          ? {
              value: Math.min(whole, least + practice.mostPlay),
              snap: 'down',
              why: 'that uses the sheet’s height without letting the contents rattle',
            }
          : { value: least, snap: 'up', why: 'that is what the pocket takes' };
      },
    },
    {
      name: o,
      wish: (_, known) => {
        const spare = roomHeight - 2 * at(known, H);
        const deepest = practice.deepestOverlapShare * at(known, H);
        if (!fill || spare <= practice.overlap)
          return { value: practice.overlap, snap: 'nearest', why: 'makers like 1/2 in for a seam' };
        // no score lies at the seam, so it may take what is left to the last fraction
        return spare <= deepest
          ? { value: spare, snap: 'exact', why: 'the seam takes the height that is left' }
          : { value: deepest, snap: 'down', why: 'a deeper seam would only add bulk' };
      },
    },
    {
      name: h,
      wish: (_, known) => {
        const spare = (roomWidth - 2 * at(known, W) - at(known, S)) / 2;
        const deepest = practice.deepestHemShare * at(known, W);
        if (!fill) return { value: practice.hem, snap: 'nearest', why: 'makers like 1/2 in for a hem' };
        const onGrid = grid > 0 ? Math.floor(spare / grid) * grid : spare;
        const exact = !gridGiven && spare <= deepest && 2 * (spare - onGrid) < practice.sliver;
        return exact
          ? { value: spare, snap: 'exact', why: 'the hems take the width that is left' }
          : { value: Math.min(spare, deepest), snap: 'down', why: 'the hems take the width that they may' };
      },
    },
    {
      name: t,
      wish: (_, known) => ({
        value: practice.topFlapShare * at(known, H),
        snap: 'nearest',
        why: 'the seam lies a little above the middle',
      }),
    },
  ];
}
