import type { Places } from '../spec/knockouts.ts';
import { design } from '../state/design.ts';
import { useStore } from '../state/store.ts';

/** Places and pockets that the folder has; until there is one, those that nearly every folder has. */
export function usePlaces(): {
  readonly places: readonly string[];
  readonly pockets: readonly string[];
  readonly first: Places;
} {
  const { folded } = useStore(design, 'folded');
  const places = folded?.plan.places.map(({ name }) => name) ?? ['front cover'];
  const pockets = folded?.pockets ?? [];
  return {
    places,
    pockets,
    first: { place: places[0] ?? 'front cover', pocket: pockets[0] ?? 'front pocket' },
  };
}
