import type { Beginning, Units } from '../spec/knockouts.ts';
import { design, unitsIn } from '../state/design.ts';
import { usePicked, useStore } from '../state/store.ts';

/** The units that the page writes lengths in. */
export const useUnits = (): Units => (usePicked(design, unitsIn) === 'in' ? 'in' : 'mm');

/** Places and pockets that the folder has; until there is one, those that nearly every folder has. */
export function usePlaces(): {
  readonly places: readonly string[];
  readonly pockets: readonly string[];
  readonly first: Beginning;
} {
  const { folded } = useStore(design, 'folded');
  const units = useUnits();
  const places = folded?.plan.places.map(({ name }) => name) ?? ['front cover'];
  const pockets = folded?.pockets ?? [];
  return {
    places,
    pockets,
    first: { place: places[0] ?? 'front cover', pocket: pockets[0] ?? 'front pocket', units },
  };
}
