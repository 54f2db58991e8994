import { MaxRectsPacker, PACKING_LOGIC, Rectangle } from 'maxrects-packer/dist/maxrects-packer.mjs';
import potpack from 'potpack';
import type { NestInput } from '../../shared/nesting/nest-spec.ts';

/** The fewest sheets that maxrects-packer needs in any of its ways, for one kind of sheet that does not run out. */
export function sheetsByMaxRects({ pieces, sheets: [sheet], gap = 0 }: NestInput): number {
  if (sheet === undefined) throw new Error('no sheet');
  const margin = sheet.margin ?? 0;
  const counts = Object.values(PACKING_LOGIC)
    .filter((logic) => typeof logic === 'number')
    .map((logic) => {
      const packer = new MaxRectsPacker(sheet.width - 2 * margin, sheet.height - 2 * margin, gap, {
        smart: false,
        pot: false,
        square: false,
        allowRotation: true,
        logic,
      });
      packer.addArray(
        pieces.flatMap(({ width, height, count, turns = 'quarter' }) =>
          Array.from({ length: count }, () => new Rectangle(width, height, 0, 0, false, turns === 'quarter')),
        ),
      );
      return packer.bins.length;
    });
  return Math.min(...counts);
}

/** The box into which potpack puts all pieces, unturned and without a gap. */
export function boxByPotpack({ pieces }: NestInput): { readonly width: number; readonly height: number } {
  const boxes = pieces.flatMap(({ width, height, count }) =>
    Array.from({ length: count }, () => ({ w: width, h: height })),
  );
  const { w, h } = potpack(boxes);
  return { width: w, height: h };
}
