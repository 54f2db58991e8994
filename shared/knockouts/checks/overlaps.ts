import { boundsOf, centreOf, overlap } from '../../geometry/bounds.ts';
import { intersect } from '../../geometry/clip/combine.ts';
import type { Checked, Finding } from './finding.ts';

/** Knockouts that run into each other: they are cut as one opening. */
export const overlaps = ({ list }: Checked): readonly Finding[] =>
  list.flatMap((one, at) =>
    list.slice(at + 1).flatMap((other): Finding[] => {
      if (one.onBlank.length === 0 || other.onBlank.length === 0) return [];
      if (!overlap(boundsOf(one.onBlank), boundsOf(other.onBlank))) return [];
      const common = intersect(one.onBlank, other.onBlank);
      if (common.length === 0) return [];
      return [
        {
          code: 'knockouts-overlap',
          does: 'tell',
          knockouts: [one.index, other.index],
          message: `${one.title} and ${other.title} overlap: they are cut as one opening`,
          remedy: 'move them apart if that is not meant',
          brief: 'two overlap',
          at: [centreOf(boundsOf(common))],
        },
      ];
    }),
  );
