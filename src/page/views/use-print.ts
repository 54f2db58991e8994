import { useMemo } from 'preact/hooks';
import { design, swappedIn } from '../state/design.ts';
import { faces, photoOn, photos } from '../state/photos.ts';
import { usePicked, useStore } from '../state/store.ts';
import type { Print } from './marks.tsx';

const noSheet: Print['open'] = {
  sheet: { width: 1, height: 1 },
  ups: { outside: { x: 0, y: -1 }, inside: { x: 0, y: -1 } },
};

/** What is printed on the sheet just now; the same object until something of it changes. */
export function usePrint(): Print {
  const { folded } = useStore(design, 'folded');
  const swapped = usePicked(design, swappedIn);
  const all = useStore(photos, ...faces);
  const open = folded?.open ?? noSheet;
  return useMemo(
    () => ({
      photos: { outside: photoOn('outside', swapped, all), inside: photoOn('inside', swapped, all) },
      open,
    }),
    [swapped, all, open],
  );
}
