import { z } from 'zod';
import { commonShape } from '../../spec/common.ts';

const no = (what: string) => z.never({ error: what }).optional();

/** The members of the spec of a style that holds nothing and needs no glue. */
export const paperShape = {
  ...commonShape,
  contents: no('this style holds nothing, so it takes no contents').meta({
    description: 'This style holds nothing.',
  }),
  glue: no('this style is not glued').meta({ description: 'This style is not glued.' }),
  ease: no('this style holds nothing, so it leaves no play').meta({
    description: 'This style holds nothing.',
  }),
};
