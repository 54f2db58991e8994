import type { Face } from '../state/photos.ts';

/** The address of a face's paint, for `fill`. */
export const paintOf = (face: Face): string => `url(#paper-${face})`;

const Dots = ({ face }: { readonly face: Face }) => (
  <pattern id={`paper-${face}`} width="14" height="14" patternUnits="userSpaceOnUse">
    <rect width="14" height="14" class="paper-dots" />
    <circle cx="3.5" cy="3.5" r="1.3" class="print-dots" />
    <circle cx="10.5" cy="10.5" r="1.3" class="print-dots" />
  </pattern>
);

const Stripes = ({ face }: { readonly face: Face }) => (
  <pattern
    id={`paper-${face}`}
    width="7"
    height="7"
    patternUnits="userSpaceOnUse"
    patternTransform="rotate(45)"
  >
    <rect width="7" height="7" class="paper-stripes" />
    <rect width="1.2" height="7" class="print-stripes" />
  </pattern>
);

/**
 * The two prints of the sheet where no photo shows them: dots outside and stripes inside, until they are swapped. One
 * for the whole page.
 */
export const PaperDefs = ({ swapped }: { readonly swapped: boolean }) => (
  <svg class="defs" width="0" height="0" aria-hidden="true" focusable="false">
    <defs>
      <Dots face={swapped ? 'inside' : 'outside'} />
      <Stripes face={swapped ? 'outside' : 'inside'} />
    </defs>
  </svg>
);
