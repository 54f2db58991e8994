import { storeOf } from './store.ts';

export const faces = ['outside', 'inside'] as const;
export type Face = (typeof faces)[number];

/** A picture of one face of the sheet. It stays in the browser: its address is one that only this page can open. */
export interface Photo {
  readonly address: string;
  readonly width: number;
  readonly height: number;
}

/** By the face that was photographed, before the faces are swapped. */
export const photos = storeOf<Partial<Record<Face, Photo>>>({});

/** Shows a file as a face. @returns false for a file that is no picture */
export async function loadPhoto(face: Face, file: Blob): Promise<boolean> {
  const address = URL.createObjectURL(file);
  const picture = new Image();
  picture.src = address;
  try {
    await picture.decode();
  } catch {
    URL.revokeObjectURL(address);
    return false;
  }
  dropPhoto(face);
  photos.set({ [face]: { address, width: picture.naturalWidth, height: picture.naturalHeight } });
  return true;
}

export function dropPhoto(face: Face): void {
  const there = photos.get()[face];
  if (there) URL.revokeObjectURL(there.address);
  photos.set({ [face]: undefined });
}

/** The photo that a face of the sheet shows, once the two prints may have changed places. */
export const photoOn = (face: Face, swapped: boolean, all: Partial<Record<Face, Photo>>): Photo | undefined =>
  all[swapped ? (face === 'outside' ? 'inside' : 'outside') : face];
