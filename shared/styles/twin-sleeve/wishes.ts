import type { Nm } from '../../lengths/nanometres.ts';
import type { Unknown } from '../../solver/bounds.ts';
import { at } from '../common/dimension.ts';
import type { Situation } from '../style.ts';
import { H, h, o, S, t, W } from './dimensions.ts';
import { practice } from './practice.ts';
import type { TwinSleeveSpec } from './spec.ts';

/** What the solver looks for, in order, and what each would best be. */
export function unknownsOf(spec: TwinSleeveSpec, situation: Situation): Unknown[] {
  const { grid, gridGiven } = situation;
  const fill = situation.prefer === 'whole-sheet';
  const roomWidth = Math.min(...situation.rooms.map((room) => room.width));
  const roomHeight = Math.min(...situation.rooms.map((room) => room.height));
  const { demand, foldLoss } = situation;
  const hasDemand = demand !== undefined;
  const panel =
    spec.dimensions?.panel?.width ?? (demand ? demand.width + demand.easeAcross + 2 * foldLoss : 0);
  /** Whether hems no deeper than the style likes can use up the width beside a spine. */
  const hemsReach = (spine: Nm): boolean =>
    panel === 0 || (roomWidth - spine) / 2 - panel <= practice.deepestHemShare * panel + practice.sliver / 2;
  const ownOverlap = spec.dimensions?.overlap;
  return [
    {
      name: S,
      wish: ({ least }) => {
        const wanted = hasDemand ? least : Math.max(least, practice.spine);
        const why = hasDemand ? 'that is what the stack takes' : 'makers like 1/2 in';
        const snapped = grid > 0 ? Math.ceil(wanted / grid) * grid : wanted;
        // two equal hems share what is left of the width: an odd step would leave a sliver to trim
        const odd = fill && grid > 0 && (roomWidth - snapped) % (2 * grid) === grid;
        return odd && hemsReach(snapped + grid)
          ? {
              value: snapped + grid,
              snap: 'nearest',
              why: `${why}, and a step more lets the hems use up the sheet’s width`,
            }
          : { value: wanted, snap: hasDemand ? 'up' : 'nearest', why };
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
        const whole = (roomHeight - (ownOverlap ?? practice.overlap)) / 2;
        // with a given seam nothing else can take the last fraction of the height
        const snap = ownOverlap !== undefined && !gridGiven ? 'exact' : 'down';
        if (!hasDemand) return { value: whole, snap, why: 'that uses the sheet’s height' };
        return fill
          ? {
              value: Math.min(whole, least + practice.mostPlay),
              snap: whole <= least + practice.mostPlay ? snap : 'down',
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
        return spare - deepest < practice.sliver
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
        const reached = 2 * (spare - deepest) < practice.sliver;
        const exact = !gridGiven && reached && 2 * (spare - onGrid) < practice.sliver;
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
        why: 'makers like the seam near the middle',
      }),
    },
  ];
}
