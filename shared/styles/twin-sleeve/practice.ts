import { inch } from '../../lengths/nanometres.ts';
import { commonPractice } from '../common/practice.ts';

/** Common practice, no published source, unless a line says otherwise. */
export const practice = Object.freeze({
  ...commonPractice,
  hem: inch(1 / 2),
  overlap: inch(1 / 2),
  spine: inch(1 / 2),
  /** Share of the panel that a hem or the top flap takes where there is a choice. */
  hemShare: 0.42,
  deepestHemShare: 0.5,
  topFlapShare: 0.43,
  deepestOverlapShare: 1 / 3,
  /** An item rattles with more play than this. */
  mostPlay: inch(3 / 4),
});
