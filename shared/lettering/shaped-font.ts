import type * as HarfBuzz from 'harfbuzzjs';
import type { Contour, Stretch } from '../geometry/contour.ts';
import type { Point } from '../geometry/plane.ts';
import type { Parsed } from '../lengths/parse-length.ts';
import type { Font, SetGlyph } from './font.ts';
import type { PairKerning } from './kern-table.ts';
import { damaged } from './sfnt.ts';

/** Height of capitals where a font neither tells it nor has an H: 0.7 em, *common practice*. */
const USUAL_CAP_HEIGHT = 0.7;

/**
 * A font whose outlines and rules HarfBuzz reads.
 * @param kern pairs of an old kern table, for fonts without kerning in GPOS (HarfBuzz, as packed, reads no kern table)
 */
export function makeFont(hb: typeof HarfBuzz, file: Uint8Array, kern?: PairKerning): Parsed<Font> {
  const face = new hb.Face(new hb.Blob(file));
  const font = new hb.Font(face);
  if (face.collectUnicodes().length === 0) return damaged('it has no characters');
  const kernsByGpos = face.getTableFeatureTags('GPOS').includes('kern');
  const pen = penFor(hb);
  const outlineOf = (glyph: number): readonly Contour[] => pen((funcs) => font.drawGlyph(glyph, funcs));
  return {
    ok: true,
    value: Object.freeze({
      unitsPerEm: face.upem,
      capHeight: capHeightOf(hb, font, face.upem),
      setLine: (text: string) => {
        const glyphs = setLine(hb, font, text);
        return kern && !kernsByGpos ? withKerning(glyphs, kern) : glyphs;
      },
      outlineOf,
    }),
  };
}

function setLine(hb: typeof HarfBuzz, font: HarfBuzz.Font, text: string): SetGlyph[] {
  const buffer = new hb.Buffer();
  buffer.addText(text);
  buffer.guessSegmentProperties();
  hb.shape(font, buffer);
  const positions = buffer.getGlyphPositions();
  return buffer.getGlyphInfos().map(({ codepoint, cluster }, index) => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {};
    return { id: codepoint, cluster, advance: xAdvance, offset: { x: xOffset, y: yOffset } };
  });
}

const withKerning = (glyphs: readonly SetGlyph[], kern: PairKerning): SetGlyph[] =>
  glyphs.map((glyph, index) => {
    const next = glyphs[index + 1];
    return next ? { ...glyph, advance: glyph.advance + kern(glyph.id, next.id) } : glyph;
  });

/** Told by the font where it tells something sensible, else measured on H. */
function capHeightOf(hb: typeof HarfBuzz, font: HarfBuzz.Font, em: number): number {
  const sensible = (height: number | undefined): height is number =>
    height !== undefined && height > 0.3 * em && height < 1.5 * em;
  const told = font.getMetricPosition(hb.MetricsTag.CAP_HEIGHT);
  if (sensible(told)) return told;
  const glyph = font.nominalGlyph(0x48);
  const measured = glyph === undefined ? undefined : font.glyphExtents(glyph)?.yBearing;
  return sensible(measured) ? measured : USUAL_CAP_HEIGHT * em;
}

/** Collects what HarfBuzz draws as contours, turning y down. */
function penFor(hb: typeof HarfBuzz): (draw: (funcs: HarfBuzz.DrawFuncs) => void) => Contour[] {
  let contours: Contour[] = [];
  let start: Point = { x: 0, y: 0 };
  let stretches: Stretch[] = [];
  const at = (x: number, y: number): Point => ({ x, y: 0 - y });
  const close = (): void => {
    if (stretches.length > 0) contours.push({ start, stretches: closed(start, stretches) });
    stretches = [];
  };
  const funcs = new hb.DrawFuncs();
  funcs.setMoveToFunc((x, y) => {
    close();
    start = at(x, y);
  });
  funcs.setLineToFunc((x, y) => void stretches.push({ to: at(x, y) }));
  funcs.setCubicToFunc(
    (ax, ay, bx, by, x, y) => void stretches.push({ control: [at(ax, ay), at(bx, by)], to: at(x, y) }),
  );
  funcs.setClosePathFunc(close);
  return (draw) => {
    contours = [];
    stretches = [];
    draw(funcs);
    close();
    return contours;
  };
}

const closed = (start: Point, stretches: readonly Stretch[]): readonly Stretch[] => {
  const end = stretches.at(-1)?.to;
  return end && (end.x !== start.x || end.y !== start.y) ? [...stretches, { to: start }] : stretches;
};
