import { tooMuchDetail } from '../artwork/detail.ts';
import { resolve, unite } from '../geometry/clip/combine.ts';
import type { Contour } from '../geometry/contour.ts';
import { moveContour } from '../geometry/move-shape.ts';
import { type Isometry, rounded } from '../geometry/plane.ts';
import { mapPoints, mapShape } from '../geometry/walk.ts';
import { bridgeWidth } from '../knockouts/bridges/bridge-width.ts';
import { type Held, holdIslands } from '../knockouts/bridges/hold-islands.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { inMm } from '../lengths/show-length.ts';
import { type Baseline, curved, straight } from './baseline.ts';
import type { Fault } from './fault.ts';
import type { Font, SetGlyph } from './font.ts';
import type { LetteringSpec } from './lettering-spec.ts';
import { setLine } from './set-line.ts';

/** Lettering as a figure, or why it cannot be drawn. */
export type Letters =
  | ({ readonly ok: true } & Held)
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * A line of text as a figure in nanometres: the baseline at y = 0, letters above it, the first letter's origin at x = 0.
 * A curved baseline has its middle at y = 0. Letters that overlap are united, so that joined script is one opening.
 * @param spec read and with its units settled
 * @param font the one that the spec asks for
 * @param caliper of the paper, which bridges have to suit
 */
export function writeLetters(spec: LetteringSpec, font: Font, caliper: Nm): Letters {
  const line = setLine(spec.lettering, font);
  if (!line.ok) return { ok: false, faults: [line.fault] };
  const scale = spec.height / font.capHeight;
  const letters = lettersOf(line.glyphs, scale, spec.spacing ?? 0);
  const width = letters.at(-1)?.end ?? 0;
  const tooTight = curveFault(spec, width);
  if (tooTight) return { ok: false, faults: [tooTight] };
  const baseline = spec.curve ? curved(spec.curve.radius, spec.curve.bulge, width / 2) : straight;
  const glyphs = letters.flatMap((letter) => glyphsOf(letter, font, scale, baseline));
  const detail = tooMuchDetail(glyphs.flat());
  if (detail !== undefined) return { ok: false, faults: [detailFault(detail)] };
  const united = unite(glyphs.map((contours) => resolve(contours, 'nonzero')));
  const shape = mapShape(united, rounded, false);
  const bridges = spec.bridgeWidth ?? bridgeWidth(spec.height, caliper);
  const held = holdIslands(shape, { bridges: spec.bridges, width: bridges, upAt: baseline.upAt });
  return 'shape' in held ? { ok: true, ...held } : { ok: false, faults: [{ path: ['bridges'], ...held }] };
}

/** Glyphs that belong to the same characters and so are turned together, with where they stand on the baseline. */
interface Letter {
  readonly glyphs: readonly { readonly glyph: SetGlyph; readonly at: Nm }[];
  readonly start: Nm;
  readonly end: Nm;
}

function lettersOf(glyphs: readonly SetGlyph[], scale: number, spacing: Nm): readonly Letter[] {
  const letters: Letter[] = [];
  let cluster: number | undefined;
  let pen = 0;
  for (const glyph of glyphs) {
    const last = glyph.cluster === cluster ? letters.pop() : undefined;
    if (!last && letters.length > 0) pen += spacing;
    const end = pen + glyph.advance * scale;
    letters.push({
      glyphs: [...(last?.glyphs ?? []), { glyph, at: pen }],
      start: last?.start ?? pen,
      end,
    });
    cluster = glyph.cluster;
    pen = end;
  }
  return letters;
}

/** The outlines of a letter's glyphs where they stand, in nanometres; they may cross. */
function glyphsOf(letter: Letter, font: Font, scale: number, baseline: Baseline): Contour[][] {
  const place = baseline.placeAt((letter.start + letter.end) / 2);
  return letter.glyphs.map(({ glyph, at }) =>
    font.outlineOf(glyph.id).map((contour) => standing(contour, glyph, at, scale, place)),
  );
}

const standing = (contour: Contour, { offset }: SetGlyph, at: Nm, scale: number, place: Isometry): Contour =>
  moveContour(
    mapPoints(contour, ({ x, y }) => ({ x: at + (x + offset.x) * scale, y: (y - offset.y) * scale })),
    place,
  );

/** Whether a line goes round its circle, with letters that do not collide at their tops. */
function curveFault({ curve, height }: LetteringSpec, width: Nm): Fault | undefined {
  if (!curve) return undefined;
  const least = Math.max(width / (2 * Math.PI), (curve.bulge === 'up' ? 1 : 2) * height);
  if (curve.radius >= least) return undefined;
  const enough = Math.ceil(inMm(least) * 10) / 10;
  return {
    path: ['curve', 'radius'],
    message: `the line is ${Math.round(inMm(width))} mm long with capitals of ${inMm(height)} mm, too much for this circle`,
    remedy: `give a radius of at least ${enough} mm, lower letters or less text`,
  };
}

const detailFault = (detail: string): Fault => ({
  path: ['lettering'],
  message: `the lettering ${detail}`,
  remedy: 'use a plainer font, less text or a smaller height',
});
