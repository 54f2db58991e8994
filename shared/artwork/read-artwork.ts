import { type Bounds, boundsOf, centreOf } from '../geometry/bounds.ts';
import { resolve, unite } from '../geometry/clip/combine.ts';
import type { Contour, Shape } from '../geometry/contour.ts';
import { moveShape, scaleShape, shift } from '../geometry/move-shape.ts';
import { rounded } from '../geometry/plane.ts';
import { mapPoints, mapShape } from '../geometry/walk.ts';
import { bridgeWidth } from '../knockouts/bridges/bridge-width.ts';
import { type Held, holdIslands } from '../knockouts/bridges/hold-islands.ts';
import { islandsOf } from '../knockouts/bridges/islands.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { inMm } from '../lengths/show-length.ts';
import type { Fault } from '../lettering/fault.ts';
import { type ArtworkSpec, LARGEST, SMALLEST } from './artwork-spec.ts';
import { MOST_CONTOURS, tooMuchDetail } from './detail.ts';
import { contoursOfPath } from './path-contours.ts';
import { readSvg, type SvgDrawing } from './read-svg.ts';
import { Refused } from './refused.ts';

/** Artwork as a figure, or why it cannot be cut. */
export type Artwork =
  | ({ readonly ok: true } & Held)
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * A user's artwork as a figure in nanometres, the middle of its bounds on (0, 0). Shapes that overlap are united.
 * @param spec read and with its units settled
 * @param caliper of the paper, which bridges have to suit
 */
export function readArtwork(spec: ArtworkSpec, caliper: Nm): Artwork {
  try {
    const shape = centred(shapeOf(drawingOf(spec), spec));
    const heights = islandsOf(shape).map(({ bounds }) => bounds.bottom - bounds.top);
    const width = spec.bridgeWidth ?? bridgeWidth(Math.max(0, ...heights), caliper);
    const held = holdIslands(shape, { bridges: spec.bridges, width });
    return 'shape' in held ? { ok: true, ...held } : { ok: false, faults: [{ path: ['bridges'], ...held }] };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return { ok: false, faults: [{ path: ['artwork'], message: error.message, remedy: error.remedy }] };
  }
}

/** An SVG file begins with a tag, path data with a command. */
function drawingOf({ artwork, fillRule }: ArtworkSpec): SvgDrawing {
  const text = artwork.replace(/^\uFEFF/u, '').trimStart();
  if (/^m/iu.test(text)) {
    const contours = contoursOfPath(text, 'the artwork');
    return { unit: undefined, shown: undefined, elements: [{ contours, rule: fillRule ?? 'nonzero' }] };
  }
  if (!text.startsWith('<'))
    throw new Refused(
      'the artwork is neither SVG nor path data',
      'give the text of an SVG file, or path data that begins with M',
    );
  if (fillRule !== undefined)
    throw new Refused('fillRule is for path data alone', 'leave it out; an SVG file says it by fill-rule');
  return readSvg(text);
}

/** All of a drawing at the size that it is to have. */
function shapeOf(drawing: SvgDrawing, spec: ArtworkSpec): Shape {
  const all = drawing.elements.flatMap(({ contours }) => contours);
  if (all.length === 0) throw new Refused('the artwork has no shapes', 'draw at least one filled shape');
  const bounds = boundsOf(all);
  checkShown(bounds, drawing.shown);
  const scale = scaleFor(bounds, drawing, spec);
  checkSize((bounds.right - bounds.left) * scale, (bounds.bottom - bounds.top) * scale);
  const scaled = drawing.elements.map(({ contours, rule }) => ({
    contours: contours.map((contour) => enlarged(contour, bounds, scale)),
    rule,
  }));
  const detail = tooMuchDetail(scaled.flatMap(({ contours }) => contours));
  if (detail !== undefined) throw new Refused(`the artwork ${detail}`, 'simplify it, or make it smaller');
  const shape = unite(scaled.map(({ contours, rule }) => resolve(contours, rule)));
  if (shape.length === 0)
    throw new Refused('the artwork encloses no area', 'close its lines around what is to be cut out');
  if (shape.length > MOST_CONTOURS)
    throw new Refused(`the artwork falls into more than ${MOST_CONTOURS} parts`, 'simplify it');
  // lines without area may have reached beyond the figure; what is cut has the size that was asked for
  const fitted = scaleFor(boundsOf(shape), { unit: 1 }, spec);
  return Math.abs(fitted - 1) < 1e-6 ? shape : scaleShape(shape, fitted);
}

/** Nanometres of a user unit. Throws {@link Refused} where nothing tells. */
function scaleFor(
  { left, right, top, bottom }: Bounds,
  { unit }: Pick<SvgDrawing, 'unit'>,
  { width, height }: ArtworkSpec,
): number {
  const scales = [width && width / (right - left), height && height / (bottom - top)].filter(
    (scale) => scale !== undefined,
  );
  const scale = scales.length > 0 ? Math.min(...scales) : unit;
  if (scale !== undefined && Number.isFinite(scale)) return scale;
  throw new Refused('nothing says how large the artwork is', 'give its width or height');
}

function checkSize(width: Nm, height: Nm): void {
  const [least, most] = [Math.min(width, height), Math.max(width, height)];
  // a hundredth of play, since a size that was asked for comes back rounded
  if (least >= SMALLEST * 0.99 && most <= LARGEST * 1.01) return;
  const shown = (length: Nm) => Math.round(inMm(length) * 100) / 100;
  throw new Refused(
    `the artwork is ${shown(width)} mm × ${shown(height)} mm`,
    `give it a width or height that makes both sides ${inMm(SMALLEST)} mm to ${inMm(LARGEST)} mm`,
  );
}

/** Refuses what viewers hide: nobody would expect it to be cut. A hundredth of play is for curves and rounding. */
function checkShown(bounds: Bounds, shown: Bounds | undefined): void {
  if (!shown) return;
  const play = Math.max(shown.right - shown.left, shown.bottom - shown.top) / 100;
  if (
    bounds.left >= shown.left - play &&
    bounds.top >= shown.top - play &&
    bounds.right <= shown.right + play &&
    bounds.bottom <= shown.bottom + play
  )
    return;
  throw new Refused(
    'a part of the artwork lies outside the page that the file shows',
    'enlarge the viewBox to all of the drawing, or remove what lies outside',
  );
}

const enlarged = (contour: Contour, { left, top }: Bounds, scale: number): Contour =>
  mapPoints(contour, ({ x, y }) => ({ x: (x - left) * scale, y: (y - top) * scale }));

function centred(shape: Shape): Shape {
  const { x, y } = centreOf(boundsOf(shape));
  return mapShape(moveShape(shape, shift(-x, -y)), rounded, false);
}
