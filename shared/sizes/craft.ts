import { imperial, type Size } from './size.ts';

const sheet = (id: string, width: number, height: number, inches: string): Size => ({
  id,
  title: `craft paper, ${inches} in`,
  kinds: ['sheet'],
  ...imperial(width, height),
  source: 'common practice',
  authority: 'common practice',
});

/** Patterned paper as it is sold for paper-crafts. */
export const craft: readonly Size[] = [
  sheet('craft-6x6', 6, 6, '6 x 6'),
  sheet('craft-8x8', 8, 8, '8 x 8'),
  sheet('craft-8.5x11', 8 + 1 / 2, 11, '8 1/2 x 11'),
  sheet('craft-12x12', 12, 12, '12 x 12'),
  sheet('craft-12x18', 12, 18, '12 x 18'),
];
