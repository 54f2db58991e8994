import { boundsOf } from '../../shared/geometry/bounds.ts';
import { isCurve, type Shape } from '../../shared/geometry/contour.ts';
import type { Point } from '../../shared/geometry/plane.ts';
import { type Raster, rasterOf } from './raster.ts';

/** Millimetres of paper around a figure on its page. */
const MARGIN = 3;

const number = (nm: number): string => (nm / 1e6).toFixed(5);
const pair = ({ x, y }: Point): string => `${number(x)} ${number(y)}`;

/** A figure's lines as path data in millimetres. */
export const pathOf = (shape: Shape): string =>
  shape
    .map(({ start, stretches }) => {
      const lines = stretches.map((stretch) =>
        isCurve(stretch)
          ? `C${pair(stretch.control[0])} ${pair(stretch.control[1])} ${pair(stretch.to)}`
          : `L${pair(stretch.to)}`,
      );
      return `M${pair(start)}${lines.join('')}Z`;
    })
    .join('');

/** A page with a figure on it as pixels: painted where it is cut out. */
export function cutPage(shape: Shape, dpi: number): Raster {
  const { left, top, right, bottom } = boundsOf(shape);
  const box = [left / 1e6 - MARGIN, top / 1e6 - MARGIN, (right - left) / 1e6, (bottom - top) / 1e6];
  const [x = 0, y = 0, width = 0, height = 0] = [
    box[0],
    box[1],
    ...box.slice(2).map((size) => size + 2 * MARGIN),
  ];
  return rasterOf(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${x} ${y} ${width} ${height}"><path d="${pathOf(shape)}" fill-rule="evenodd"/></svg>`,
    dpi,
  );
}

/**
 * Into how many pieces the page falls once a figure is cut out of it, by flooding the pixels that are left: pixels that
 * share a side hang together. Pieces of fewer than `least` pixels are not counted.
 */
export function paperPieces(shape: Shape, dpi = 200, least = 4): number {
  const { width, height, painted } = cutPage(shape, dpi);
  const isPaper = new Uint8Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) isPaper[y * width + x] = painted(x, y) < 0.5 ? 1 : 0;
  let pieces = 0;
  for (let first = 0; first < isPaper.length; first++) {
    if (isPaper[first] !== 1) continue;
    if (flood(isPaper, width, first) >= least) pieces++;
  }
  return pieces;
}

/** Clears all that hangs together with a pixel, and counts it. */
function flood(isPaper: Uint8Array, width: number, first: number): number {
  const queue = [first];
  isPaper[first] = 0;
  let count = 0;
  for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
    count++;
    const x = at % width;
    const next = [x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1, at - width, at + width];
    for (const to of next) {
      if (isPaper[to] !== 1) continue;
      isPaper[to] = 0;
      queue.push(to);
    }
  }
  return count;
}

/** Square millimetres that are painted, by counting pixels. */
export function paintedArea({ width, height, painted }: Raster, dpi: number): number {
  let pixels = 0;
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) pixels += painted(x, y);
  return pixels * (25.4 / dpi) ** 2;
}
