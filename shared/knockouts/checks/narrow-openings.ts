import { boundsOf, centreOf } from '../../geometry/bounds.ts';
import { thinParts } from '../../geometry/clip/thin-parts.ts';
import type { Shape } from '../../geometry/contour.ts';
import type { PlacedKnockout } from '../placed.ts';
import { type Checked, type Finding, shownPlaces } from './finding.ts';
import { greatestWidth, widthAtNeck } from './narrowness.ts';

/** Of several narrow parts of one knockout this many are measured. */
const MEASURED = 3;

/** Openings that are narrower than a tool cuts cleanly, or than anybody sees; slots are narrow on purpose. */
export const narrowOpenings = (checked: Checked): readonly Finding[] =>
  checked.list.flatMap((knockout) => (knockout.narrow ? [] : narrowIn(knockout, checked)));

function narrowIn(knockout: PlacedKnockout, { limits, say }: Checked): Finding[] {
  const { index, title } = knockout;
  const limit = limits.leastOpening;
  const openings = differentOpenings(knockout);
  const parts = thinParts(openings, limit).filter(({ kind }) => kind !== 'tip');
  if (parts.length === 0) return [];
  const sizes = parts
    .slice(0, MEASURED)
    .map(({ kind, outline }) =>
      kind === 'whole' ? greatestWidth(outline, limit) : widthAtNeck(openings, outline, limit),
    );
  const size = Math.round(Math.min(...sizes) / 1e4) * 1e4;
  if (size >= limit) return [];
  const many = parts.length > 1 ? ` in ${parts.length} places` : '';
  return [
    {
      code: 'opening-narrow',
      does: 'tell',
      knockouts: [index],
      message: `${title} is only ${say(size)} wide${many}: openings of less than ${say(limit)} tear or close up`,
      remedy: 'make it larger or plainer',
      brief: `opening of ${say(size)}`,
      size,
      limit,
      at: shownPlaces(parts.map(({ outline }) => centreOf(boundsOf(outline)))),
    },
  ];
}

/** The openings of one layer where no layer clips them, since all layers then have the same; else all of them. */
function differentOpenings({ figure, onForm, cuts, onBlank }: PlacedKnockout): Shape {
  const whole = new Set(onForm);
  const [first] = cuts;
  const same = cuts.every(
    (cut) => cut.onForm.length === figure.length && cut.onForm.every((each) => whole.has(each)),
  );
  return first && same ? first.onBlank : onBlank;
}
