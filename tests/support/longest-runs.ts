import { readFileSync } from 'node:fs';
import { PNG } from 'pngjs';

/** The longest run of dark pixels in each row of a page, as [start, length] in millimetres at ten pixels each. */
export function longestRuns(file: string): readonly { start: number; length: number }[] {
  const { width, height, data } = PNG.sync.read(readFileSync(file));
  return Array.from({ length: height }, (_, y) => {
    let best = { start: 0, length: 0 };
    let start = 0;
    for (let x = 0; x <= width; x++) {
      const dark = x < width && (data[4 * (y * width + x)] ?? 255) < 160;
      if (dark) continue;
      if (x - start > best.length) best = { start: start / 10, length: (x - start) / 10 };
      start = x + 1;
    }
    return best.length > 1 ? { start: best.start, length: best.length } : { start: 0, length: 0 };
  });
}
