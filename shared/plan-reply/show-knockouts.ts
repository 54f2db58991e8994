import type { z } from 'zod';
import type { Folded } from '../folding/proof-of.ts';
import { isOuter } from '../geometry/area.ts';
import { boundsOf } from '../geometry/bounds.ts';
import type { Shape } from '../geometry/contour.ts';
import { extentOf } from '../knockouts/anchored.ts';
import type { Finding } from '../knockouts/checks/finding.ts';
import type { LayerCut } from '../knockouts/cut-through.ts';
import { piecesOf } from '../knockouts/pieces.ts';
import type { PlacedKnockout } from '../knockouts/placed.ts';
import { placesOf } from '../knockouts/places.ts';
import { showLength } from '../lengths/show-length.ts';
import type { knockoutsReply, placesReply } from './knockouts-reply.ts';
import type { Warning } from './warning.ts';

/** To whole micrometres: what is seen of curves has no more. */
const shown = (length: number) => showLength(Math.round(length / 1000) * 1000);

const shownExtentOf = (shape: Shape) => {
  const { width, height } = extentOf(boundsOf(shape));
  return { width: shown(width), height: shown(height) };
};

/** Where knockouts can be put. */
export const showPlaces = (folded: Folded): z.output<typeof placesReply> =>
  placesOf(folded).map((place) => {
    const { width, height } = extentOf(place);
    return {
      name: place.name,
      seenFrom: place.side,
      width: showLength(Math.round(width)),
      height: showLength(Math.round(height)),
    };
  });

/** What became of a spec's knockouts; nothing where it has none. */
export function showKnockouts(folded: Folded): { readonly knockouts?: z.output<typeof knockoutsReply> } {
  const { knockouts } = folded;
  // slots of locks are told where the locks are
  if (!knockouts || knockouts.list.length === 0) return {};
  const { list, paper, findings } = knockouts;
  return {
    knockouts: {
      list: list.map((knockout) => ({
        title: knockout.title,
        place: knockout.place.name,
        ...shownExtentOf(knockout.figure),
        cuts: layersIn(knockout).map((cut) => showCut(cut, knockout)),
      })),
      openings: paper.shape.filter((contour) => !isOuter(contour)).length,
      outlineChanges: paper.reshaped,
      pieces: piecesOf(folded).map(({ name, title, kind, knockout, shape }) => ({
        name,
        title,
        kind,
        knockout,
        count: shape.filter(isOuter).length,
        ...shownExtentOf(shape),
      })),
      findings: findings.map(showFinding),
    },
  };
}

/** The layers of a knockout, the nearest to who looks at its place first. */
function layersIn({ cuts, place }: PlacedKnockout): readonly LayerCut[] {
  const heightOf = ({ faces }: LayerCut) => Math.max(...faces.map(({ height }) => height));
  const toward = place.side === 'inside' ? -1 : 1;
  return cuts.toSorted((one, other) => toward * (heightOf(one) - heightOf(other)));
}

function showCut({ faces, onForm }: LayerCut, { place, onForm: whole }: PlacedKnockout) {
  const turned = faces[0]?.turned ?? false;
  const uncut = new Set(whole);
  return {
    panels: [...new Set(faces.map(({ panel }) => panel))],
    face: (place.side === 'inside') === turned ? ('outside' as const) : ('inside' as const),
    mirrored: (place.side === 'outside') !== turned,
    reachesEdge: onForm.some((contour) => !uncut.has(contour)),
  };
}

const showFinding = ({ code, knockouts, message, remedy, size, limit, at }: Finding, index: number) => ({
  number: index + 1,
  code,
  knockouts: [...knockouts],
  message,
  ...(remedy === undefined ? {} : { remedy }),
  ...(size === undefined ? {} : { size: shown(size) }),
  ...(limit === undefined ? {} : { limit: showLength(limit) }),
  at: at.map(({ x, y }) => ({ x: shown(x), y: shown(y) })),
});

/** What the checks of knockouts tell, as warnings. */
export const knockoutWarnings = ({ knockouts }: Folded): readonly Warning[] =>
  (knockouts?.findings ?? []).map(({ code, knockouts: [first], message, remedy }) => ({
    code,
    path: first === undefined ? '/knockouts' : `/knockouts/${first}`,
    message,
    ...(remedy === undefined ? {} : { remedy }),
  }));
