import { inch, mm } from '../lengths/nanometres.ts';

/** Width of tape that makers use; common practice. */
export const usualGlueWidth = inch(1 / 4);

/** How far glue stays, in nanometres, from what it must not reach; common practice. */
export const glueKeepOut = Object.freeze({
  /** A free edge of one of the two layers: glue that is pressed out beyond it shows and sticks. */
  edge: mm(1.5),
  /** A score of one of them: it would no longer bend. */
  score: mm(2),
  /** A pocket's mouth that is open between them: what slides in would stick. */
  mouth: mm(3),
});
