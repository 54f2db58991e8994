import { tapeLength } from '../creases/glue-length.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Folded } from '../folding/proof-of.ts';
import { areaOf } from '../geometry/area.ts';
import { boxCorners } from '../geometry/bounds.ts';
import { polygon } from '../geometry/walk.ts';
import type { Nm } from '../lengths/nanometres.ts';
import type { Box } from '../ribbon/ribbon.ts';
import { withSpoilage } from './quantities.ts';
import { paperOf, type SetPiece, type SetSpec } from './set-spec.ts';

/** A piece of every kit as it is to be cut. Lengths in nanometres, areas in nm². */
export interface CutPiece {
  readonly name: string;
  readonly spec: SetPiece;
  /** Its paper's place in the set's list. */
  readonly paper: number;
  /** With spoilage. */
  readonly quantity: number;
  readonly turns: 'none' | 'half' | 'quarter';
  /** The printed side of the paper that must lie up while it is cut; absent where it does not matter. */
  readonly faceUp?: 'outside' | 'inside';
  /** All that is scored and cut, its kerf with it. */
  readonly drawing: Drawing;
  /** Before any kerf. */
  readonly blank: { readonly width: Nm; readonly height: Nm };
  /** Of its paper, less what is cut out of it. */
  readonly area: number;
  /** Of the finished piece, where it folds. */
  readonly closed?: Box;
  /** For one. */
  readonly tape: Nm;
  readonly folded?: Folded;
}

/** A piece ready to be nested, from its fold where it has one. */
export function cutPieceOf(
  set: SetSpec,
  spec: SetPiece,
  folded: Folded | undefined,
  drawing: Drawing,
): CutPiece {
  const paper = paperOf(set, spec.paper) ?? 0;
  const outsideUp = set.convention?.sheetLies === 'outside-up';
  // a plain rectangle may be turned over once it is cut
  const facing = 'cut' in spec ? undefined : (spec.shows ?? 'outside');
  const kerf = set.cutter?.kerf ?? 0;
  return {
    name: spec.name,
    spec,
    paper,
    quantity: withSpoilage(set.kits * spec.perKit, set.spoilage),
    turns: spec.turns ?? (set.papers[paper]?.oneWay === true ? 'none' : 'quarter'),
    ...(facing === undefined ? {} : { faceUp: (facing === 'outside') === outsideUp ? 'outside' : 'inside' }),
    drawing,
    blank:
      folded && 'make' in spec
        ? folded.plan.blank
        : { width: Math.round(drawing.width - kerf), height: Math.round(drawing.height - kerf) },
    // openings run the way that suits the tool, so that their areas' signs tell nothing
    area:
      Math.abs(areaOf(drawing.outline.contours)) -
      drawing.knockouts.reduce((sum, { contours }) => sum + Math.abs(areaOf(contours)), 0),
    ...(folded && 'make' in spec ? { closed: folded.plan.closed } : {}),
    tape:
      folded && 'make' in spec ? tapeLength(folded.program.steps.filter((step) => step.kind === 'glue')) : 0,
    ...(folded && 'make' in spec ? { folded } : {}),
  };
}

/** A plain rectangle, larger all around by half of the kerf. */
export function drawingOfRectangle(
  name: string,
  size: { readonly width: Nm; readonly height: Nm },
  kerf: Nm,
): Drawing {
  const [width, height] = [size.width + kerf, size.height + kerf];
  const corners = boxCorners({ left: 0, top: 0, right: width, bottom: height });
  return {
    title: name,
    description: '',
    width,
    height,
    valleys: [],
    mountains: [],
    knockouts: [],
    outline: { id: 'outline', contours: [polygon(corners)] },
    offcuts: [],
    wholeSheet: false,
    turned: false,
  };
}
