import type { PocketPlace } from '../../folding/pockets.ts';

function pocket(cover: 'front' | 'back', end: 'left' | 'right'): PocketPlace {
  const flaps = ['top flap', 'bottom flap'];
  return {
    name: `${cover} pocket`,
    panel: cover,
    behind: [`${end} hem`],
    front: flaps.flatMap((flap) => [`${flap}, ${cover}`, `${flap}, ${end} hem`, `${flap}, spine`]),
    mouth: end,
  };
}

/** Both pockets: the contents lie between a cover with its hem and the flaps. */
export const pockets: readonly PocketPlace[] = [pocket('front', 'left'), pocket('back', 'right')];
