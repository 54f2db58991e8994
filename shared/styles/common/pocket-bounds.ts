import { atLeast, type Bound } from '../../solver/bounds.ts';
import type { Situation } from '../style.ts';
import { leastLockedPocket, leastTab, pocketPractice } from './bottom-pocket.ts';
import { type Join, leastLockedTab, lockedPaper } from './lock.ts';

/**
 * What the tabs of a bottom pocket must have room for, and how low it may be.
 * @param names the unknowns that are the tabs’ depth and the pocket’s height
 */
export const pocketBounds = (
  spec: { readonly join?: Join | undefined } & Parameters<typeof lockedPaper>[0],
  { tab, pocket }: { readonly tab: string; readonly pocket: string },
  { glueWidth, caliper }: Pick<Situation, 'glueWidth' | 'caliper'>,
): Bound[] =>
  spec.join === 'slots'
    ? [
        atLeast(
          'least tab',
          'form',
          { [tab]: 1 },
          leastLockedTab(lockedPaper(spec, caliper)),
          'a slot lies 6 mm inside its panel’s edge, and the tongue reaches beyond it',
          '/join',
        ),
        atLeast(
          'least pocket',
          'form',
          { [pocket]: 1 },
          leastLockedPocket(lockedPaper(spec, caliper)),
          'a lower pocket has no room for its tongues',
          '/join',
        ),
      ]
    : [
        atLeast(
          'least tab',
          'form',
          { [tab]: 1 },
          leastTab(glueWidth),
          'a tab must hold its glue, clear of its edge and its score',
          '/glue/width',
        ),
        atLeast(
          'least pocket',
          'form',
          { [pocket]: 1 },
          pocketPractice.least,
          'a lower pocket has no room for its glue',
        ),
      ];
