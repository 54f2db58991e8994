import type { Face, Photo } from '../state/photos.ts';

/** The address of a face's paint, for `fill`. */
export const paintOf = (face: Face): string => `url(#paper-${face})`;

const Outside = () => (
  <pattern id="paper-outside" width="14" height="14" patternUnits="userSpaceOnUse">
    <rect width="14" height="14" class="paper-outside" />
    <circle cx="3.5" cy="3.5" r="1.3" class="print-outside" />
    <circle cx="10.5" cy="10.5" r="1.3" class="print-outside" />
  </pattern>
);

const Inside = () => (
  <pattern id="paper-inside" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
    <rect width="7" height="7" class="paper-inside" />
    <rect width="1.2" height="7" class="print-inside" />
  </pattern>
);

/** The two prints of the sheet where no photo shows them: dots outside, stripes inside. One for the whole page. */
export const PaperDefs = () => (
  <svg class="defs" width="0" height="0" aria-hidden="true" focusable="false">
    <defs>
      <Outside />
      <Inside />
    </defs>
  </svg>
);

/** Photos by the face of the sheet that shows them. */
export type FacePhotos = Partial<Record<Face, Photo | undefined>>;
