import { Resvg } from '@resvg/resvg-js';

/** A drawing as pixels: how much of each is painted, 0 to 1. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly painted: (x: number, y: number) => number;
}

/** Renders SVG with an independent renderer, at a resolution in pixels to the inch. */
export function rasterOf(svg: string, dpi: number): Raster {
  const image = new Resvg(svg, { dpi, font: { loadSystemFonts: false } }).render();
  const { width, height, pixels } = image;
  return { width, height, painted: (x, y) => (pixels[4 * (y * width + x) + 3] ?? 0) / 255 };
}

/** One painted stretch along a row or a column, in pixels. */
export interface Stroke {
  /** Middle of the painted stretch, weighted by how much of each pixel is painted. */
  readonly centre: number;
  readonly start: number;
  readonly end: number;
}

const strokesAlong = (count: number, painted: (index: number) => number): readonly Stroke[] => {
  const strokes: Stroke[] = [];
  for (let index = 0; index < count; index++) {
    if (painted(index) === 0) continue;
    const start = index + 1 - painted(index);
    let [weight, moment] = [0, 0];
    while (index < count && painted(index) > 0) {
      weight += painted(index);
      moment += painted(index) * (index + 0.5);
      index++;
    }
    strokes.push({ centre: moment / weight, start, end: index - 1 + painted(index - 1) });
  }
  return strokes;
};

/** What a row of pixels crosses, from left to right. */
export const strokesInRow = ({ width, painted }: Raster, y: number): readonly Stroke[] =>
  strokesAlong(width, (x) => painted(x, y));

/** What a column of pixels crosses, from top to bottom. */
export const strokesInColumn = ({ height, painted }: Raster, x: number): readonly Stroke[] =>
  strokesAlong(height, (y) => painted(x, y));
