import type { ArtworkSpec } from '../../shared/artwork/artwork-spec.ts';
import { type Artwork, readArtwork } from '../../shared/artwork/read-artwork.ts';
import { type Bounds, boundsOf } from '../../shared/geometry/bounds.ts';
import { CALIPER } from './fonts.ts';

/** A page of 100 mm × 100 mm, one unit a millimetre. */
export const PAGE = 'width="100mm" height="100mm" viewBox="0 0 100 100"';

/** An SVG file with what is given in it. */
export const svg = (inside: string, attributes = PAGE): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${inside}</svg>`;

/** Artwork that has to be read; without bridges, so that it is what was drawn. */
export function read(artwork: string, more: Partial<ArtworkSpec> = {}): Extract<Artwork, { ok: true }> {
  const result = readArtwork({ artwork, bridges: 'none', ...more }, CALIPER);
  if (!result.ok) throw new Error(result.faults.map(({ message }) => message).join('; '));
  return result;
}

/** Why artwork is refused. */
export function refusal(artwork: string, more: Partial<ArtworkSpec> = {}): string {
  const result = readArtwork({ artwork, bridges: 'none', ...more }, CALIPER);
  if (result.ok) throw new Error('the artwork was read');
  const [fault] = result.faults;
  if (!fault || fault.remedy === '') throw new Error('a refusal has a remedy');
  return `${fault.path.join('/')}: ${fault.message}`;
}

/** Width and height of what was read, in millimetres. */
export function sizeOf(artwork: string, more: Partial<ArtworkSpec> = {}): readonly [number, number] {
  const { left, top, right, bottom }: Bounds = boundsOf(read(artwork, more).shape);
  return [(right - left) / 1e6, (bottom - top) / 1e6];
}
